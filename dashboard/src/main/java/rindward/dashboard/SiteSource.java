package rindward.dashboard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Where the site's files are read as they were written: our own from this jar, or in a test from
 * elsewhere; the libraries from theirs, at paths that carry their versions. Safe for use by many
 * threads.
 */
@FunctionalInterface
interface SiteSource {

  /** The files that come with the program. */
  SiteSource OWN = path -> resource("/site" + path);

  /** Returns one of our own files; null where there is none. */
  byte @Nullable [] own(String path);

  /** Returns a file, of which our own come first; null where there is none. */
  default byte @Nullable [] read(String path) {
    byte[] own = own(path);
    return own == null && isLibrary(path)
        ? resource("/META-INF/resources/webjars" + path.substring("/lib".length()))
        : own;
  }

  /** Tells whether a library has this path, which carries its version, so that it never changes. */
  default boolean isLibrary(String path) {
    return path.startsWith("/lib/") && own(path) == null;
  }

  /**
   * Returns a file that must be there.
   *
   * @throws IllegalStateException naming the file that is not
   */
  default String text(String path) {
    byte[] written = read(path);
    if (written == null) {
      throw new IllegalStateException("site" + path + " is missing from the class path");
    }
    return new String(written, StandardCharsets.UTF_8);
  }

  private static byte @Nullable [] resource(String name) {
    try (InputStream in = SiteSource.class.getResourceAsStream(name)) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("could not read " + name + " from the class path", e);
    }
  }
}
