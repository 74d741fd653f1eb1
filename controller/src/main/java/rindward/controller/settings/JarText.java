package rindward.controller.settings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A text that comes with Rindward, inside its jar. */
final class JarText {
  private JarText() {}

  /**
   * Returns a whole text.
   *
   * @param resource its path in the jar
   * @throws IllegalStateException if it is not there, which only a broken build can cause
   */
  static String of(String resource) {
    try (InputStream in = JarText.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is missing from the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(resource + " could not be read", e);
    }
  }
}
