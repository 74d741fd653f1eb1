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
 * which a board with a slow card can afford and a jar opened for each request cannot. A page's
 * modules come in two bundles and its sheets as one, so that a phone far from the shed asks for
 * four files instead of fifty.
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
  private static final String HTML = "text/html; charset=utf-8";
  private static final Map<String, String> MEDIA_TYPES =
      Map.of(
          "html", HTML,
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "webmanifest", "application/manifest+json");

  /** A sheet that another one begins with. */
  private static final Pattern SHEET = Pattern.compile("(?m)^@import '([^']+)';\\n");

  private static final String INDEX = "/index.html";
  private static final String ENTRY = "/app.js";
  private static final String PAGES = "/site";
  private static final String LIBRARIES = "/META-INF/resources/webjars";
  private static final String IN_LIBRARIES = "/lib/";

  private final Map<String, SiteFile> files = new ConcurrentHashMap<>();
  private final String importMap = importMapOf(text(INDEX));
  private final ImportMap imports = ImportMap.parse(importMap);
  private final String plots = imports.resolve(INDEX, "uplot");
  private final ModuleBundle first = ModuleBundle.first(ENTRY, Site::text, imports);

  /**
   * Answers with the file that the request's path names; the address of a page is the index. Where
   * there is nothing, whoever followed an old link is told so on a page, and a program by a
   * problem.
   */
  void serve(Context ctx) {
    boolean isPage = PAGE.matcher(ctx.path()).matches();
    String path = isPage ? INDEX : ctx.path();
    String mediaType = NAME.matcher(path).matches() ? MEDIA_TYPES.get(ending(path)) : null;
    SiteFile file = mediaType == null ? null : find(path);
    if (mediaType == null || file == null) {
      serveNothing(ctx);
      return;
    }
    if (isPage && ctx.queryString() == null) {
      ctx.header("Link", String.join(", ", PageStart.of(ctx.path(), plots).links()));
    }
    ctx.header("Cache-Control", file.versioned() ? "max-age=31536000, immutable" : "no-cache");
    ctx.header("ETag", file.etag());
    if (file.etag().equals(ctx.header("If-None-Match"))) {
      ctx.status(304);
      return;
    }
    send(ctx, file, mediaType);
  }

  private void serveNothing(Context ctx) {
    SiteFile index = isRead(ctx) ? find(INDEX) : null;
    if (index == null) {
      throw new NotFoundResponse("There is nothing at this address.");
    }
    ctx.status(404);
    ctx.header("Cache-Control", "no-store");
    send(ctx, index, HTML);
  }

  /** Tells whether a person looks at the answer: a browser that opens an address says so. */
  private static boolean isRead(Context ctx) {
    String accepted = Optional.ofNullable(ctx.header("Accept")).orElse("");
    return accepted.contains("text/html") && !ctx.path().startsWith("/api/");
  }

  private static void send(Context ctx, SiteFile file, String mediaType) {
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
    return importMap;
  }

  private static String importMapOf(String index) {
    Matcher map = IMPORT_MAP.matcher(index);
    if (!map.find()) {
      throw new IllegalStateException("site/index.html holds no import map");
    }
    return map.group(1);
  }

  private @Nullable SiteFile find(String path) {
    SiteFile known = files.get(path);
    if (known != null) {
      return known;
    }
    byte[] written = read(path);
    if (written == null) {
      return null;
    }
    SiteFile found = file(gathered(path, written), own(path) == null);
    files.put(path, found);
    return found;
  }

  private byte[] gathered(String path, byte[] written) {
    String text = path.endsWith(".css") ? sheets(path) : path.endsWith(".js") ? bundle(path) : null;
    return text == null ? written : text.getBytes(StandardCharsets.UTF_8);
  }

  /** Returns the bundle that begins with a module; null for one with which none begins. */
  private @Nullable String bundle(String path) {
    if (path.equals(ENTRY)) {
      return first.text();
    }
    return first.later().contains(path)
        ? ModuleBundle.further(path, Site::text, imports, first, ENTRY).text()
        : null;
  }

  private static String sheets(String path) {
    return SHEET
        .matcher(text(path))
        .replaceAll(imported -> Matcher.quoteReplacement(sheets(imported.group(1))));
  }

  private static String text(String path) {
    byte[] written = read(path);
    if (written == null) {
      throw new IllegalStateException("site" + path + " is missing from the class path");
    }
    return new String(written, StandardCharsets.UTF_8);
  }

  /** Our own pages come first; a library's path carries its version, so it never changes. */
  private static byte @Nullable [] read(String path) {
    byte[] own = own(path);
    return own == null && path.startsWith(IN_LIBRARIES)
        ? resource(LIBRARIES + path.substring(IN_LIBRARIES.length() - 1))
        : own;
  }

  private static byte @Nullable [] own(String path) {
    return resource(PAGES + path);
  }

  private static byte @Nullable [] resource(String name) {
    try (InputStream in = Site.class.getResourceAsStream(name)) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("could not read " + name + " from the class path", e);
    }
  }

  private static SiteFile file(byte[] plain, boolean versioned) {
    ByteArrayOutputStream zipped = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(zipped)) {
      gzip.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException("could not compress in memory", e);
    }
    String etag = "\"" + SecurityHeaders.sha256(plain).substring(0, 22) + "\"";
    return new SiteFile(plain, zipped.toByteArray(), etag, versioned);
  }

  private static String ending(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private record SiteFile(byte[] plain, byte[] zipped, String etag, boolean versioned) {}
}
