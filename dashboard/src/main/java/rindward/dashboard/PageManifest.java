package rindward.dashboard;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The site's pages, read from {@code site/pages.json}, where the frame reads them too: each page's
 * address stands there alone.
 *
 * @param frame what stands around every page
 * @param byKey each page by the name that the site gives it
 */
@JsonIgnoreProperties({"about", "menu"}) // For readers, and for the frame.
record PageManifest(
    @JsonProperty(required = true) Frame frame,
    @JsonProperty(value = "pages", required = true) Map<String, SitePage> byKey) {

  static final String FILE = "/pages.json";

  /** The page that every address of the site begins as. */
  static final String INDEX = "/index.html";

  PageManifest {
    byKey = Map.copyOf(byKey);
  }

  /**
   * What a browser fetches for every page.
   *
   * @param script run before the modules
   * @param sheet with all that it imports
   * @param module the first one, with all that it imports
   * @param asks what every page asks of the shed
   */
  record Frame(
      @JsonProperty(required = true) String script,
      @JsonProperty(required = true) String sheet,
      @JsonProperty(required = true) String module,
      @JsonProperty(required = true) List<String> asks) {
    Frame {
      asks = List.copyOf(asks);
    }
  }

  /**
   * Reads the file.
   *
   * @throws IllegalStateException when it is not one, saying where
   */
  static PageManifest parse(String json) {
    try {
      return JsonMapper.builder()
          .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build()
          .readValue(json, PageManifest.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("site" + FILE + " cannot be read: " + e.getMessage(), e);
    }
  }

  Collection<SitePage> pages() {
    return byKey.values();
  }

  /** Returns the modules that are brought when a page is looked at, or after it. */
  Set<String> laterModules() {
    return pages().stream()
        .flatMap(SitePage::modules)
        .sorted()
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Returns the site's files of which each build has its own, and which carry its name. */
  Set<String> ofOneBuild() {
    Set<String> files =
        new LinkedHashSet<>(List.of(INDEX, frame.script(), frame.sheet(), frame.module()));
    files.addAll(laterModules());
    return files;
  }

  /** Returns what a phone keeps from the first visit on: the way from lot to lot in a barn. */
  List<String> keptForTheBarn() {
    Stream<String> pages =
        pages().stream().filter(page -> !page.keeps().isEmpty()).flatMap(SitePage::modules);
    return Stream.concat(
            Stream.of(INDEX, frame.script(), frame.sheet(), frame.module()), pages.sorted())
        .distinct()
        .toList();
  }
}
