package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** A room over time, in a real browser. */
class RoomPageTest {
  private static final String CURING = "/room/Curing%20room";
  private static final int FIRST_LOAD_BYTES = 200_000;

  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void aRoomOnTheFrontPageLeadsToItsPast() {
    site.open("/");
    site.awaitText(".room h2", "Curing room");
    site.find(".room h2 a").sendKeys(Keys.ENTER);
    awaitChart();
    site.awaitText("main h1", "Curing room");
    assertThat(site.browser().driver().getCurrentUrl()).endsWith(CURING);
    site.browser().driver().navigate().back();
    site.awaitText(".health", "Both rooms are right");
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void aMomentIsLookedAtWithTheKeyboardAndSaidInWords() {
    site.open(CURING);
    awaitChart();
    site.find(".moment input").sendKeys(Keys.ARROW_LEFT);
    site.awaitText(".reading", "°C");
    assertThat(site.browser().text("output-strips")).containsAnyOf("on", "off");
    site.script(
        "const i = arguments[0]; i.value = Number(i.max) - 8.5 * 3600e3;"
            + " i.dispatchEvent(new Event('input'))",
        site.find(".moment input"));
    site.awaitText(".reading", "not measured");
    site.awaitText("output-strips .said", "not known");
  }

  @Test
  void aValueOutsideItsBandIsSaidInWords() {
    site.open(CURING + "?span=week");
    awaitChart();
    for (int hours = 0; hours < 24; hours++) {
      site.script(
          "const i = arguments[0]; i.value = Number(i.max) - arguments[1] * 3600e3;"
              + " i.dispatchEvent(new Event('input'))",
          site.find(".moment input"),
          30 + hours);
      if (site.browser().text(".air-of-room:nth-of-type(2) .reading").contains("too")) {
        return;
      }
    }
    assertThat(site.browser().text(".air-of-room:nth-of-type(2) .reading")).contains("too");
  }

  @Test
  void aStretchIsDraggedOutAndTheWayBackIsOneStep() {
    site.browser().size(1280, 900);
    site.open(CURING);
    awaitChart();
    new Actions(site.browser().driver())
        .moveToElement(site.find(".u-over"), -200, 0)
        .clickAndHold()
        .moveByOffset(150, 0)
        .moveByOffset(100, 0)
        .release()
        .perform();
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> site.browser().driver().getCurrentUrl().contains("from="));
    site.browser().driver().navigate().back();
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> !site.browser().driver().getCurrentUrl().contains("from="));
    site.awaitText(".spans [aria-current]", "Day");
  }

  @Test
  void closerAndWiderWorkWithoutAMouse() {
    site.open(CURING + "?span=season");
    awaitChart();
    site.awaitText(".spans [aria-current]", "Season");
    site.find(".steps button:nth-of-type(3)").sendKeys(Keys.ENTER);
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> site.browser().driver().getCurrentUrl().contains("from="));
    awaitChart();
    String file = site.find(".file").getAttribute("href");
    assertThat(file).contains("/api/rooms/Curing%20room/samples.csv?from=");
  }

  @Test
  void theReasonsOfWhatWasSwitchedAreThere() {
    site.open(CURING);
    awaitChart();
    site.find(".changes summary").sendKeys(Keys.ENTER);
    site.awaitText(".changes", "Heater on: 0.6 degrees below the middle");
  }

  @Test
  void aRoomThatDoesNotExistIsSaidSo() {
    site.open("/room/Attic");
    site.awaitText("main", "There is no room of that name");
    site.browser().complaints(); // The browser rightly noted the answer 404.
  }

  @Test
  void theFirstLoadIsSmallWithTheChartToo() {
    site.open(CURING);
    awaitChart();
    Number bytes =
        (Number)
            site.script(
                "return ['navigation', 'resource'].flatMap(t => performance.getEntriesByType(t))"
                    + ".reduce((sum, e) => sum + e.transferSize, 0)");
    assertThat(bytes.longValue()).isBetween(30_000L, (long) FIRST_LOAD_BYTES);
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.open(CURING);
    awaitChart();
    site.find(".moment input").sendKeys(Keys.ARROW_LEFT);
    site.find(".changes summary").sendKeys(Keys.ENTER);
    site.assertUsableByEverybody();
    assertThat(site.browser().complaints()).isEmpty();
  }

  private static void awaitChart() {
    await()
        .atMost(Duration.ofSeconds(30))
        .ignoreExceptions()
        .until(() -> site.find("air-chart canvas").isDisplayed());
  }
}
