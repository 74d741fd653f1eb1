package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The site's modules that draw nothing, each by the tests that stand beside this in {@code
 * site-tests}, on an empty page of the site in a real browser, whose reader is in Britain.
 */
class ModulesTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @ParameterizedTest
  @ValueSource(strings = {"units", "span", "outbox", "book", "words"})
  void everyTestOfTheModuleHolds(String module) {
    site.browser()
        .driver()
        .executeCdpCommand("Emulation.setLocaleOverride", Map.of("locale", "en-GB"));
    site.open("/tests/blank.html");
    List<Map<String, String>> results =
        results(
            """
            return import('/tests/%s.js')
              .then(() => import('/tests/harness.js'))
              .then(({ run }) => run());
            """
                .formatted(module));

    assertThat(results).isNotEmpty();
    assertThat(results)
        .allSatisfy(test -> assertThat(test.get("failure")).as(test.get("name")).isNull());
  }

  /**
   * They draw, and so need a page that names what they are drawn with, and draws nothing itself.
   */
  @Test
  void noFormLosesWhatWasTyped() {
    site.browser().driver().executeCdpCommand("Network.enable", Map.of());
    blocked("*/app.js*");
    site.open("/you");
    blocked();
    site.browser().driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
    List<Map<String, String>> results =
        results(
            """
            return import('/tests/forms.js')
              .then(() => import('/tests/harness.js'))
              .then(({ run }) => run());
            """);
    assertThat(results).hasSizeGreaterThan(5);
    assertThat(results)
        .allSatisfy(test -> assertThat(test.get("failure")).as(test.get("name")).isNull());
  }

  private static void blocked(String... urls) {
    site.browser()
        .driver()
        .executeCdpCommand("Network.setBlockedURLs", Map.of("urls", List.of(urls)));
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, String>> results(String script) {
    return (List<Map<String, String>>) site.script(script);
  }
}
