package rindward.dashboard;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.signin.Access;

/**
 * One page of the site, as {@link PageManifest} lists it.
 *
 * @param address such as {@code /lot/{code}}, with at most one thing that is named in it, at its
 *     end; a {@code code} is asked for in capitals, however it was typed
 * @param access who may open it. What it then shows is guarded answer by answer, and who may not
 *     see that is shown how to sign in; so a page is for anyone
 * @param module what defines its elements
 * @param asks what it asks of the shed first, to the letter
 * @param asksOn the screens on which it asks just that; null for all
 * @param soon the library that it needs once it stands, by its name in the import map; null for
 *     none
 * @param keeps what opens over a page that is needed in the barn; none for another page
 */
@JsonIgnoreProperties({"title", "under", "needsShed", "standsAlone"}) // The frame reads these.
record SitePage(
    @JsonProperty(required = true) String address,
    @JsonProperty(required = true) Access access,
    @JsonProperty(required = true) String module,
    @JsonSetter(nulls = Nulls.AS_EMPTY) List<String> asks,
    @Nullable String asksOn,
    @Nullable String soon,
    @JsonSetter(nulls = Nulls.AS_EMPTY) List<String> keeps) {

  private static final Pattern NAMED = Pattern.compile("\\{(\\w+)}");
  private static final int LONGEST_NAME = 200;

  SitePage {
    asks = List.copyOf(asks);
    keeps = List.copyOf(keeps);
  }

  Stream<String> modules() {
    return Stream.concat(Stream.of(module), keeps.stream());
  }

  /** Returns what the page at a path names, still encoded; empty where it names nothing. */
  static String nameIn(String path) {
    String[] parts = path.split("/", -1);
    return parts.length > 2 ? parts[2] : "";
  }

  /** Tells whether a path is not too long to be this page's. */
  static boolean fits(String path) {
    return nameIn(path).length() <= LONGEST_NAME;
  }

  /** Returns what is asked first by the page that names this. */
  List<String> asks(String name) {
    return asks.stream().map(each -> filled(each, name)).toList();
  }

  private static String filled(String ask, String name) {
    return NAMED
        .matcher(ask)
        .replaceAll(
            named ->
                Matcher.quoteReplacement(
                    named.group(1).equals("code") ? name.toUpperCase(Locale.ROOT) : name));
  }
}
