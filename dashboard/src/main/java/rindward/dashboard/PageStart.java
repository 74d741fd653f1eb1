package rindward.dashboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What a page of the site asks for first. Named beside the page itself, it is on its way while the
 * browser still reads the frame around it, which saves a phone on a slow network two round trips.
 *
 * @param links the values of a {@code Link} header (RFC 8288), in the order in which they are worth
 *     fetching: a browser asks for six at a time
 */
record PageStart(List<String> links) {

  private static final String EVERY_LOT = "/api/lots?all=false&from=0&size=200";

  /** On wider screens a chart has more parts than the shed's usual 400, and is asked for so. */
  private static final String PHONE = "; media=\"(max-width: 440px)\"";

  PageStart {
    links = List.copyOf(links);
  }

  /**
   * Returns the start of the page at an address of the site.
   *
   * @param path such as {@code /lot/K3}, still encoded, without a query
   * @param plots the address of the library that draws charts
   */
  static PageStart of(String path, String plots) {
    String[] parts = path.split("/", -1);
    String page = parts[1];
    String name = parts.length > 2 ? parts[2] : "";
    return switch (page) {
      case "" -> page("/rooms/rooms.js", answers("/api/alarms"));
      case "room" -> page("/rooms/room.js", Stream.concat(air(name), Stream.of(soon(plots))));
      case "alarms" -> page("/alarms/alarms.js", answers("/api/alarms", "/api/alarms/history"));
      case "lots", "place" -> page("/lots/lots.js", answers(EVERY_LOT));
      case "lot" ->
          page("/lots/lot.js", answers("/api/lots/" + name.toUpperCase(Locale.ROOT), EVERY_LOT));
      case "placards" -> page("/placards/placards.js", answers(EVERY_LOT));
      case "tastings" -> page("/tastings/tastings.js", answers("/api/tastings?from=0&size=40"));
      case "tasting" -> page("/tastings/tastings.js", answers("/api/tastings/" + name));
      case "taste" -> page("/tastings/tastings.js", answers("/api/taste/" + name));
      case "varieties" -> page("/varieties/varieties.js", answers("/api/varieties?from=0&size=60"));
      case "shed" -> page("/shed/shed.js", answers("/api/shed"));
      default -> page("/" + page + "/" + page + ".js", Stream.of());
    };
  }

  private static PageStart page(String module, Stream<String> own) {
    List<String> links = new ArrayList<>();
    links.add(script("/early.js"));
    links.add("</styles/site.css>; rel=preload; as=style");
    links.addAll(answers("/api/now", "/api/me").toList()); // Every page has a line to the shed.
    // Before it asks for a module a browser makes ready to run one, and all below has to wait.
    links.add("</app.js>; rel=modulepreload");
    links.add("<" + module + ">; rel=modulepreload");
    links.addAll(own.toList());
    return new PageStart(links);
  }

  private static Stream<String> air(String room) {
    return answers(
            "/api/rooms/" + room + "/climate",
            "/api/rooms/" + room + "/switching",
            "/api/rooms/" + room + "/marks")
        .map(link -> link + PHONE);
  }

  /** What is asked of the shed, to the letter as the page asks it. */
  private static Stream<String> answers(String... addresses) {
    return Stream.of(addresses).map(each -> "<" + each + ">; rel=preload; as=fetch; crossorigin");
  }

  private static String script(String address) {
    return "<" + address + ">; rel=preload; as=script";
  }

  /** What is needed only once the page stands, and does not hold up what makes it. */
  private static String soon(String address) {
    return script(address) + "; fetchpriority=low";
  }
}
