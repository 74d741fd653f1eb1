package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rindward.dashboard.signin.Access;

/** The one list of pages, held against the files that it names and against everybody else. */
class PageManifestTest {
  private static final Path SITE =
      Path.of(URI.create(String.valueOf(SiteSource.class.getResource("/site"))));

  /** A link that a page draws, up to what is filled in. */
  private static final Pattern LINK = Pattern.compile("href=[\"'`]?(/[a-z/]*)");

  private static final Map<String, String> NAMES =
      Map.of(
          "room", "Curing%20room",
          "place", "porch",
          "lot", "k4t",
          "tasting", "first",
          "taste", "secret");

  private final PageManifest manifest = PageManifest.parse(SiteSource.OWN.text(PageManifest.FILE));

  /** Returns an address of every page. */
  static Stream<String> addresses() {
    return PageManifest.parse(SiteSource.OWN.text(PageManifest.FILE)).byKey().entrySet().stream()
        .map(
            page ->
                page.getValue()
                    .address()
                    .replaceFirst("\\{.*", NAMES.getOrDefault(page.getKey(), "nothing")))
        .sorted();
  }

  @Test
  void everyFileThatIsNamedIsThere() {
    assertThat(manifest.ofOneBuild())
        .allSatisfy(file -> assertThat(SiteSource.OWN.own(file)).isNotNull());
  }

  @Test
  void aPagesModuleSaysHowEachOfItsPagesIsDrawn() {
    manifest
        .byKey()
        .forEach(
            (key, page) ->
                assertThat(SiteSource.OWN.text(page.module()))
                    .contains("define")
                    .containsPattern("(?s)export const views = \\{.*\\b" + key + ": "));
  }

  @Test
  void aPageThatDoesNotSayWhoMayOpenItIsRefused() {
    assertThat(manifest.pages()).allMatch(page -> page.access() == Access.ANYONE);
    String silent = SiteSource.OWN.text(PageManifest.FILE).replace("\"access\": \"anyone\",", "");
    assertThatThrownBy(() -> PageManifest.parse(silent)).hasMessageContaining("'access'");
  }

  @Test
  void aWordThatNobodyKnowsIsNamed() {
    String odd = SiteSource.OWN.text(PageManifest.FILE).replace("\"keeps\"", "\"keep\"");
    assertThatThrownBy(() -> PageManifest.parse(odd))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("pages.json")
        .hasMessageContaining("\"keep\"");
  }

  @Test
  void noOtherFileNamesAPagesModuleOrAddressAsItsOwnList() throws IOException {
    Set<String> modules = manifest.laterModules();
    for (String file : List.of("frame/pages.js", "worker.js", "app.js", "index.html")) {
      assertThat(modules)
          .as(file)
          .noneMatch(module -> SiteSource.OWN.text("/" + file).contains(module));
    }
    assertThat(links())
        .as("links of the site lead to pages that are listed")
        .isNotEmpty()
        .allMatch(this::isPage);
  }

  private boolean isPage(String link) {
    return manifest.pages().stream()
        .anyMatch(page -> page.address().replaceFirst("\\{.*", "").equals(link));
  }

  /** Returns where the site's own links lead, up to what is filled in or chosen. */
  private static Set<String> links() throws IOException {
    try (Stream<Path> files = Files.walk(SITE)) {
      return files
          .filter(file -> file.toString().endsWith(".js"))
          .flatMap(PageManifestTest::linksIn)
          .collect(Collectors.toSet());
    }
  }

  private static Stream<String> linksIn(Path file) {
    try {
      return LINK.matcher(Files.readString(file))
          .results()
          .map(found -> found.group(1))
          .filter(link -> !link.startsWith("/api/"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
