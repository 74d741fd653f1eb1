package rindward.dashboard;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The site's files as a browser is given them, and the one name that they bear. The modules of a
 * page come in two bundles and the sheets as one, so that a phone far from the shed asks for four
 * files instead of fifty. Each of these says behind its address of which build it is ({@code
 * /app.js?NAME}), so that a page which was opened before an upgrade is never given a file of
 * another build than its own. The name is a digest of them all. Safe for use by many threads.
 */
final class SiteBuild {

  private static final Pattern IMPORT_MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

  /** A sheet that another one begins with. */
  private static final Pattern SHEET = Pattern.compile("(?m)^@import '([^']+)';\\n");

  private static final String WORKER = "/worker.js";
  private static final int NAME_LENGTH = 16;

  private final SiteSource source;
  private final PageManifest manifest;
  private final String importMap;
  private final ImportMap imports;
  private final ModuleBundle first;
  private final Set<String> laterModules;
  private final Set<String> ofOneBuild;
  private final String name;

  SiteBuild(SiteSource source) {
    this.source = source;
    manifest = PageManifest.parse(source.text(PageManifest.FILE));
    importMap = importMapOf(source.text(PageManifest.INDEX));
    imports = ImportMap.parse(importMap);
    first = ModuleBundle.first(manifest.frame().module(), source::text, imports);
    laterModules = manifest.laterModules();
    ofOneBuild = manifest.ofOneBuild();
    name = digest();
  }

  PageManifest manifest() {
    return manifest;
  }

  ImportMap imports() {
    return imports;
  }

  /** Returns the text between the tags of the index's import map, to the last space. */
  String importMap() {
    return importMap;
  }

  String name() {
    return name;
  }

  /** Returns the address at which this build's file is asked for. */
  String named(String file) {
    return file + "?" + name;
  }

  /** Tells whether a file is one of which each build has its own. */
  boolean isOfOneBuild(String file) {
    return ofOneBuild.contains(file);
  }

  /** Tells whether a file carries its version in its path, and so never changes. */
  boolean isLibrary(String path) {
    return source.isLibrary(path);
  }

  /** Returns a file as it is sent; null where there is none. */
  byte @Nullable [] find(String path) {
    if (path.equals(PageManifest.INDEX)) {
      return bytes(index());
    }
    if (path.equals(WORKER)) {
      return bytes(worker());
    }
    if (path.endsWith(".css") && source.own(path) != null) {
      return bytes(sheets(path));
    }
    if (path.equals(manifest.frame().module())) {
      return bytes(first.text());
    }
    return laterModules.contains(path)
        ? bytes(bundle(path, named(manifest.frame().module())))
        : source.read(path);
  }

  private String index() {
    String text = source.text(PageManifest.INDEX);
    for (String file : ofOneBuild) {
      text = text.replace("\"" + file + "\"", "\"" + named(file) + "\"");
    }
    return text;
  }

  /** The worker is told in its first line what it is to keep, and under which name. */
  private String worker() {
    String kept =
        manifest.keptForTheBarn().stream()
            .map(file -> "'" + named(file) + "'")
            .collect(Collectors.joining(", "));
    return "const BUILD = { name: '%s', kept: [%s] };\n".formatted(name, kept)
        + source.text(WORKER);
  }

  private String bundle(String path, String at) {
    return ModuleBundle.further(path, source::text, imports, first, at).text();
  }

  private String sheets(String path) {
    return SHEET
        .matcher(source.text(path))
        .replaceAll(imported -> Matcher.quoteReplacement(sheets(imported.group(1))));
  }

  /** Adds up what is sent, as it is but for the name that is still sought. */
  private String digest() {
    Map<String, String> sent = new TreeMap<>();
    ofOneBuild.forEach(file -> sent.put(file, source.text(file)));
    laterModules.forEach(module -> sent.put(module, bundle(module, manifest.frame().module())));
    sent.put(manifest.frame().module(), first.text());
    sent.put(manifest.frame().sheet(), sheets(manifest.frame().sheet()));
    sent.put(WORKER, source.text(WORKER));
    return SecurityHeaders.sha256(bytes(sent.toString()))
        .substring(0, NAME_LENGTH)
        .replaceAll("[^A-Za-z0-9]", "-");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String importMapOf(String index) {
    Matcher map = IMPORT_MAP.matcher(index);
    if (!map.find()) {
      throw new IllegalStateException("site/index.html holds no import map");
    }
    return map.group(1);
  }
}
