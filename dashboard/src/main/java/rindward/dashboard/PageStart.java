package rindward.dashboard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What a page of the site asks for first. Named beside the page itself, it is on its way while the
 * browser still reads the frame around it, which saves a phone on a slow network two round trips.
 *
 * @param links the values of a {@code Link} header (RFC 8288), in the order in which they are worth
 *     fetching: a browser asks for six at a time
 */
record PageStart(List<String> links) {

  PageStart {
    links = List.copyOf(links);
  }

  /**
   * Returns the start of a page.
   *
   * @param frame what stands around it
   * @param name what its address names, still encoded
   * @param named makes the address of a file of the site the one of this build
   * @param imports tells where a library is
   */
  static PageStart of(
      PageManifest.Frame frame,
      SitePage page,
      String name,
      UnaryOperator<String> named,
      ImportMap imports) {
    List<String> links = new ArrayList<>();
    links.add(script(named.apply(frame.script())));
    links.add("<" + named.apply(frame.sheet()) + ">; rel=preload; as=style");
    frame.asks().forEach(each -> links.add(answer(each))); // Every page has a line to the shed.
    // Before it asks for a module a browser makes ready to run one, and all below has to wait.
    links.add(module(named.apply(frame.module())));
    links.add(module(named.apply(page.module())));
    String on = page.asksOn() == null ? "" : "; media=\"" + page.asksOn() + "\"";
    page.asks(name).forEach(each -> links.add(answer(each) + on));
    if (page.soon() != null) {
      // Needed only once the page stands, it does not hold up what makes it.
      String library = imports.resolve(PageManifest.INDEX, page.soon());
      links.add(script(library) + "; fetchpriority=low");
    }
    return new PageStart(links);
  }

  /** What is asked of the shed, to the letter as the page asks it. */
  private static String answer(String address) {
    return "<" + address + ">; rel=preload; as=fetch; crossorigin";
  }

  private static String script(String address) {
    return "<" + address + ">; rel=preload; as=script";
  }

  private static String module(String address) {
    return "<" + address + ">; rel=modulepreload";
  }
}
