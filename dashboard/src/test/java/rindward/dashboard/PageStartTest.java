package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a page's header promises the browser, held against what the page asks for on a phone. */
class PageStartTest {
  private static final Pattern LINK = Pattern.compile("<([^>]+)>; rel=(\\w+)(?:; as=(\\w+))?");

  @RegisterExtension static final OpenSite site = new OpenSite();

  private final HttpClient client = HttpClient.newHttpClient();

  @ParameterizedTest
  @MethodSource("rindward.dashboard.PageManifestTest#addresses")
  void whateverIsFetchedAheadIsAskedForByThePage_toTheLetter(String page) throws Exception {
    List<MatchResult> links = links(page);
    site.browser()
        .driver()
        .executeCdpCommand(
            "Page.addScriptToEvaluateOnNewDocument",
            Map.of(
                "source",
                """
                window.asked = [];
                const own = window.fetch;
                window.fetch = (address, ...how) => {
                  window.asked.push(String(address));
                  return own(address, ...how);
                };
                """));

    site.open(page);

    await().untilAsserted(() -> assertThat(asked()).containsAll(answers(links)));
    assertThat(fetched())
        .as("each once: what came ahead was used")
        .doesNotHaveDuplicates()
        .containsAll(links.stream().map(link -> link.group(1)).toList());
  }

  private List<String> answers(List<MatchResult> links) {
    return links.stream()
        .filter(link -> "fetch".equals(link.group(3)))
        .map(link -> link.group(1))
        .toList();
  }

  @SuppressWarnings("unchecked")
  private List<String> asked() {
    return (List<String>) site.script("return window.asked");
  }

  @SuppressWarnings("unchecked")
  private List<String> fetched() {
    return (List<String>)
        site.script(
            """
            return performance.getEntriesByType('resource')
              .map(({ name }) => name.replace(location.origin, ''));
            """);
  }

  private List<MatchResult> links(String page) throws IOException, InterruptedException {
    URI address = URI.create(site.address(page));
    String header =
        client
            .send(HttpRequest.newBuilder(address).build(), BodyHandlers.discarding())
            .headers()
            .firstValue("Link")
            .orElseThrow();
    return LINK.matcher(header).results().toList();
  }
}
