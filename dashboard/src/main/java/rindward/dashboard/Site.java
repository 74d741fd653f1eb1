package rindward.dashboard;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Serves the pages and the libraries they import from the class path, so that a phone needs nothing
 * from the internet. Each file is read and compressed once; after that a request costs a look-up,
 * which a board with a slow card can afford and a jar opened for each request cannot.
 *
 * <p>Only names made of plain segments with a known ending exist; nothing else reaches the class
 * path. Safe for use by many threads.
 */
final class Site {

  private static final Pattern NAME = Pattern.compile("(/[A-Za-z0-9_][A-Za-z0-9_.-]*)+");

  /** Addresses of pages, all of which begin as the same index. */
  private static final Pattern PAGE =
      Pattern.compile(
          "/|/(alarms|lots|tastings|varieties|shed|you|placards)"
              + "|/(room|place|lot|tasting|taste)/[^/]{1,200}");

  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
  private static final Map<String, String> MEDIA_TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "webmanifest", "application/manifest+json");

  private static final String PAGES = "/site";
  private static final String LIBRARIES = "/META-INF/resources/webjars";
  private static final String IN_LIBRARIES = "/lib/";

  private final Map<String, SiteFile> files = new ConcurrentHashMap<>();

  /** Answers with the file that the request's path names; the address of a page is the index. */
  void serve(Context ctx) {
    String path = PAGE.matcher(ctx.path()).matches() ? "/index.html" : ctx.path();
    String mediaType = NAME.matcher(path).matches() ? MEDIA_TYPES.get(ending(path)) : null;
    SiteFile file = mediaType == null ? null : find(path);
    if (file == null) {
      throw new NotFoundResponse("There is nothing at this address.");
    }
    ctx.header("Cache-Control", file.versioned() ? "max-age=31536000, immutable" : "no-cache");
    ctx.header("ETag", file.etag());
    if (file.etag().equals(ctx.header("If-None-Match"))) {
      ctx.status(304);
      return;
    }
    ctx.header("Vary", "Accept-Encoding");
    ctx.contentType(mediaType);
    boolean zip = Optional.ofNullable(ctx.header("Accept-Encoding")).orElse("").contains("gzip");
    if (zip) {
      ctx.header("Content-Encoding", "gzip");
    }
    ctx.disableCompression();
    ctx.result(zip ? file.zipped() : file.plain());
  }

  /** Returns the text between the tags of the index's import map, to the last space. */
  String importMap() {
    SiteFile index = find("/index.html");
    if (index == null) {
      throw new IllegalStateException("site/index.html is missing from the class path");
    }
    Matcher map = IMPORT_MAP.matcher(new String(index.plain(), StandardCharsets.UTF_8));
    if (!map.find()) {
      throw new IllegalStateException("site/index.html holds no import map");
    }
    return map.group(1);
  }

  /** Our own pages come first; a library's path carries its version, so it never changes. */
  private @Nullable SiteFile find(String path) {
    SiteFile known = files.get(path);
    if (known != null) {
      return known;
    }
    SiteFile found = load(PAGES + path, false);
    if (found == null && path.startsWith(IN_LIBRARIES)) {
      found = load(LIBRARIES + path.substring(IN_LIBRARIES.length() - 1), true);
    }
    if (found != null) {
      files.put(path, found);
    }
    return found;
  }

  private static @Nullable SiteFile load(String resource, boolean versioned) {
    try (InputStream in = Site.class.getResourceAsStream(resource)) {
      if (in == null) {
        return null;
      }
      byte[] plain = in.readAllBytes();
      ByteArrayOutputStream zipped = new ByteArrayOutputStream();
      try (GZIPOutputStream gzip = new GZIPOutputStream(zipped)) {
        gzip.write(plain);
      }
      String etag = "\"" + SecurityHeaders.sha256(plain).substring(0, 22) + "\"";
      return new SiteFile(plain, zipped.toByteArray(), etag, versioned);
    } catch (IOException e) {
      throw new UncheckedIOException("could not read " + resource + " from the class path", e);
    }
  }

  private static String ending(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private record SiteFile(byte[] plain, byte[] zipped, String etag, boolean versioned) {}
}
