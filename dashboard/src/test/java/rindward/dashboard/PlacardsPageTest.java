package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/** What is printed for doors and crates, in a real browser. */
class PlacardsPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void everyPlaceAndEveryLotHasASquareThatLeadsToItsPage() {
    site.open("/placards");
    site.awaitText("placards-page", "Curing room", "porch", "K4T");
    assertThat(says("Curing room")).endsWith("/room/Curing%20room");
    assertThat(says("porch")).endsWith("/place/porch");
    assertThat(says("K4T")).endsWith("/lot/K4T");
    site.script("document.querySelectorAll('.square').forEach(i => (i.loading = 'eager'))");
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void whatIsTickedOffIsLeftOutOnPaper() {
    site.open("/placards");
    site.awaitText("placards-page", "porch");
    site.find("[aria-label='Print it: porch']").sendKeys(Keys.SPACE);
    site.awaitText(".placard[data-left='true']", "porch");
    site.script("window.print = () => (window.isPrinted = true)");
    site.button("Print the labels").sendKeys(Keys.ENTER);
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> Boolean.TRUE.equals(site.script("return window.isPrinted")));
    assertThat(site.find(".placards").getAttribute("data-printed")).isEqualTo("false");
  }

  @Test
  void theSquareOfAPlaceLeadsToWhatLiesThere() {
    site.open("/place/porch");
    site.awaitText("main h1", "porch");
    site.awaitText("lots-page", "Filter and order");
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void aSquareThatWouldSayNothingIsRefused() {
    site.open("/");
    String here = site.browser().driver().getCurrentUrl();
    Client client =
        new Client(Integer.parseInt(here.replaceAll("\\D+$", "").replaceAll(".*:", "")));
    HttpResponse<String> square = client.get("/api/square.svg?says=hello");
    assertThat(square.headers().firstValue("Content-Type")).hasValue("image/svg+xml");
    assertThat(client.get("/api/square.svg?says=").statusCode()).isEqualTo(400);
    assertThat(client.get("/api/square.svg?says=" + "x".repeat(301)).statusCode()).isEqualTo(400);
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.open("/placards");
    site.awaitText("placards-page", "Curing room");
    site.assertUsableByEverybody();
  }

  /** What a telephone would read off the square of that name. */
  private static String says(String name) {
    return (String)
        site.script(
            "return new URL([...document.querySelectorAll('article')]"
                + ".find(a => a.querySelector('h3').textContent === arguments[0])"
                + ".querySelector('img').src).searchParams.get('says')",
            name);
  }
}
