package rindward.dashboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.GoneResponse;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.signin.Access;

/**
 * Serves the pages and the libraries they import from the class path, so that a phone needs nothing
 * from the internet. Each file is made and compressed once; after that a request costs a look-up,
 * which a board with a slow card can afford and a jar opened for each request cannot.
 *
 * <p>Only names made of plain segments with a known ending exist; nothing else reaches the class
 * path. Safe for use by many threads.
 */
final class Site {

  private static final Pattern NAME = Pattern.compile("(/[A-Za-z0-9_][A-Za-z0-9_.-]*)+");
  private static final String HTML = "text/html; charset=utf-8";
  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final Map<String, String> MEDIA_TYPES =
      Map.of(
          "html", HTML,
          "js", SCRIPT,
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "webmanifest", "application/manifest+json");

  private static final String FOR_EVER = "max-age=31536000, immutable";

  /** What a page of another build is given for a script of its own: it begins anew with this. */
  private static final SiteFile BEGIN_ANEW =
      file("location.reload();\n".getBytes(StandardCharsets.UTF_8), "no-store");

  private final SiteBuild build;
  private final Map<String, SiteFile> files = new ConcurrentHashMap<>();

  Site(SiteSource source) {
    build = new SiteBuild(source);
  }

  /** Adds every page, and then all files. */
  void add(RoutesConfig routes) {
    for (SitePage page : build.manifest().pages()) {
      routes.get(page.address(), ctx -> servePage(ctx, page), page.access());
    }
    routes.get("/<path>", this::serveFile, Access.ANYONE);
  }

  /** Returns the name of the build, by which a page finds out that it is of another. */
  String buildName() {
    return build.name();
  }

  /** Returns the text between the tags of the index's import map, to the last space. */
  String importMap() {
    return build.importMap();
  }

  private void servePage(Context ctx, SitePage page) {
    SiteFile index = find(PageManifest.INDEX);
    if (index == null || !SitePage.fits(ctx.path())) {
      serveNothing(ctx);
      return;
    }
    if (ctx.queryString() == null) {
      String name = SitePage.nameIn(ctx.path());
      PageStart start =
          PageStart.of(build.manifest().frame(), page, name, build::named, build.imports());
      ctx.header("Link", String.join(", ", start.links()));
    }
    send(ctx, index, "no-cache", HTML);
  }

  /**
   * Answers with the file that the request's path names. Where there is nothing, whoever followed
   * an old link is told so on a page, and a program by a problem.
   */
  private void serveFile(Context ctx) {
    String path = ctx.path();
    String mediaType = NAME.matcher(path).matches() ? MEDIA_TYPES.get(ending(path)) : null;
    SiteFile file = mediaType == null ? null : find(path);
    if (mediaType == null || file == null) {
      serveNothing(ctx);
    } else if (!build.isOfOneBuild(path)) {
      send(ctx, file, file.lifetime(), mediaType);
    } else if (build.name().equals(ctx.queryString())) {
      send(ctx, file, FOR_EVER, mediaType);
    } else if (mediaType.equals(SCRIPT)) {
      send(ctx, BEGIN_ANEW, BEGIN_ANEW.lifetime(), mediaType);
    } else {
      throw new GoneResponse("This file is of another build of the site; load the page again.");
    }
  }

  private void serveNothing(Context ctx) {
    SiteFile index = isRead(ctx) ? find(PageManifest.INDEX) : null;
    if (index == null) {
      throw new NotFoundResponse("There is nothing at this address.");
    }
    ctx.status(404);
    send(ctx, index, "no-store", HTML);
  }

  /** Tells whether a person looks at the answer: a browser that opens an address says so. */
  private static boolean isRead(Context ctx) {
    String accepted = Optional.ofNullable(ctx.header("Accept")).orElse("");
    return accepted.contains("text/html") && !ctx.path().startsWith("/api/");
  }

  private static void send(Context ctx, SiteFile file, String lifetime, String mediaType) {
    ctx.header("Cache-Control", lifetime);
    if (!lifetime.equals("no-store")) {
      ctx.header("ETag", file.etag());
      if (file.etag().equals(ctx.header("If-None-Match"))) {
        ctx.status(304);
        return;
      }
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

  private @Nullable SiteFile find(String path) {
    SiteFile known = files.get(path);
    if (known != null) {
      return known;
    }
    byte[] made = build.find(path);
    if (made == null) {
      return null;
    }
    SiteFile found = file(made, build.isLibrary(path) ? FOR_EVER : "no-cache");
    files.put(path, found);
    return found;
  }

  private static SiteFile file(byte[] plain, String lifetime) {
    ByteArrayOutputStream zipped = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(zipped)) {
      gzip.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException("could not compress in memory", e);
    }
    String etag = "\"" + SecurityHeaders.sha256(plain).substring(0, 22) + "\"";
    return new SiteFile(plain, zipped.toByteArray(), etag, lifetime);
  }

  private static String ending(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private record SiteFile(byte[] plain, byte[] zipped, String etag, String lifetime) {}
}
