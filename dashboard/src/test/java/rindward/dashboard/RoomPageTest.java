package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.Rectangle;
import org.openqa.selenium.WebElement;
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
  void aFingerThatGoesSidewaysDragsOutAStretchAndABarLeadsBack() {
    site.open(CURING + "?span=week");
    awaitChart();
    site.script("arguments[0].scrollIntoView({block: 'center'})", site.find(".u-over"));
    Rectangle plot = inView(site.find(".u-over"));
    int y = plot.getY() + plot.getHeight() / 2;
    touch("touchStart", plot.getX() + 60, y);
    for (int x = 70; x <= 200; x += 10) {
      touch("touchMove", plot.getX() + x, y);
    }
    touch("touchEnd", 0, 0);
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> site.browser().driver().getCurrentUrl().contains("within=week"));
    awaitChart();
    site.find(".spans .out").sendKeys(Keys.ENTER);
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> site.browser().driver().getCurrentUrl().endsWith("?span=week"));
  }

  @Test
  void whatHappenedIsMarkedAndSaidWhereTheFingerComesDown() {
    site.open(CURING);
    awaitChart();
    site.awaitText(".line-key", "an alarm", "lots came in", "lots went out");
    site.script("arguments[0].scrollIntoView({block: 'center'})", site.find(".u-over"));
    Rectangle plot = inView(site.find(".u-over"));
    touch("touchStart", plot.getX() + plot.getWidth() * 21 / 24, plot.getY() - 10);
    touch("touchEnd", 0, 0);
    site.awaitText(".happened-now", "D1 Striped Otter went to porch");
    assertThat(site.find(".happened-now a").getAttribute("href")).endsWith("/lot/D1");
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
    site.find(".switching summary").sendKeys(Keys.ENTER);
    site.awaitText(".switching .changes", "Heater on: 0.6 degrees below the middle");
  }

  /** A chart of 100 by 100 pixels for 100 seconds and values of 0 to 100. */
  @Test
  void aValueHoldsUntilNothingIsKnownAndOneThatIsAloneIsSeen() {
    site.open(CURING);
    awaitChart();
    Object drawn =
        site.browser()
            .driver()
            .executeAsyncScript(
                """
                const done = arguments[0];
                import('/rooms/paper.js').then(({ linePath }) => {
                  const scale = { min: 0, max: 100 };
                  const bbox = { left: 0, top: 0, width: 100, height: 100 };
                  const u = { bbox, scales: { x: scale, y: scale } };
                  const ink = document.createElement('canvas').getContext('2d');
                  const reaches = (seconds, values, x, value) =>
                    ink.isPointInStroke(linePath(u, seconds, values), x, 100 - value);
                  done([
                    reaches([10, 30, 60], [40, null, 70], 29, 40),
                    reaches([10, 30, 60], [40, null, 70], 31, 40),
                    reaches([10, 30, 60], [40, null, 70], 60.5, 70),
                    reaches([50], [20], 50.5, 20),
                    reaches([10, 20], [0, 100], 15, 50),
                  ].join());
                });
                """);
    assertThat(drawn).isEqualTo("true,false,true,true,true");
  }

  @Test
  void theLineReachesTheHighestAndTheLowestValueOnTheScaleThatTheBandSets() {
    site.browser().size(1280, 800);
    site.open(CURING);
    await().until(() -> inkOfHumidity().size() == 4);
    double[] rows = numbers(inkOfHumidity());
    double[] told = numbers(extremesOfHumidity());
    double percentARow = (85 - 75) / (rows[1] - rows[0]);
    double twoRows = 2 * percentARow; // A line is two wide.
    assertThat(85 - (rows[2] - rows[0]) * percentARow).isCloseTo(told[1], within(twoRows));
    assertThat(85 - (rows[3] - rows[0]) * percentARow).isCloseTo(told[0], within(twoRows));
    assertThat(told[1] - told[0]).as("beyond the band on both sides").isGreaterThan(10);
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
    site.find(".happened summary").sendKeys(Keys.ENTER);
    site.find(".happened .when").sendKeys(Keys.ENTER);
    site.awaitText(".happened-now", "Probe silent, shelf: since");
    site.find(".switching summary").sendKeys(Keys.ENTER);
    site.find("[name=beside]").sendKeys("Keeping room");
    site.awaitText(".reading.beside", "Keeping room:", "°C");
    site.assertUsableByEverybody();
    assertThat(site.browser().complaints()).isEmpty();
  }

  /**
   * The rows of the canvas at which the band ends and the line turns; nothing until both are drawn.
   */
  private static List<?> inkOfHumidity() {
    return (List<?>)
        site.script(
            """
            const canvas = document.querySelectorAll('air-chart canvas')[1];
            if (!canvas) return [];
            const { width, height } = canvas;
            const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
            const ink = (name) =>
              getComputedStyle(document.documentElement).getPropertyValue(name).trim();
            const rows = (colours, least) =>
              Array.from({ length: height }, (_, y) => y).filter((y) => {
                let found = 0;
                for (let at = 4 * y * width; at < 4 * (y + 1) * width; at += 4) {
                  const hex = [0, 1, 2].map((i) => data[at + i].toString(16).padStart(2, '0'));
                  found += colours.includes('#' + hex.join('')) ? 1 : 0;
                }
                return found >= least;
              });
            const limits = rows([ink('--soft')], width / 3);
            const line = rows([ink('--ink'), ink('--wrong')], 1);
            return limits.length === 0 || line.length === 0
              ? [] : [limits[0], limits.at(-1), line[0], line.at(-1)];
            """);
  }

  private static List<?> extremesOfHumidity() {
    return (List<?>)
        site.browser()
            .driver()
            .executeAsyncScript(
                """
                const done = arguments[0];
                fetch('/api/rooms/Curing%20room/climate?slots=1200')
                  .then((answer) => answer.json())
                  .then(({ humidity }) => humidity.values.filter((value) => value !== null))
                  .then((values) => done([Math.min(...values), Math.max(...values)]));
                """);
  }

  private static double[] numbers(List<?> list) {
    return list.stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
  }

  /** Where an element lies in the window, which is what fingers know. */
  private static Rectangle inView(WebElement element) {
    List<?> sides =
        (List<?>)
            site.script(
                "const r = arguments[0].getBoundingClientRect();"
                    + " return [r.left, r.top, r.width, r.height].map(Math.round)",
                element);
    int[] all = sides.stream().mapToInt(side -> ((Number) side).intValue()).toArray();
    return new Rectangle(all[0], all[1], all[3], all[2]);
  }

  private static void touch(String type, int x, int y) {
    List<Map<String, Integer>> fingers =
        type.equals("touchEnd") ? List.of() : List.of(Map.of("x", x, "y", y));
    site.browser()
        .driver()
        .executeCdpCommand(
            "Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", fingers));
  }

  private static void awaitChart() {
    await()
        .atMost(Duration.ofSeconds(30))
        .ignoreExceptions()
        .until(() -> site.find("air-chart canvas").isDisplayed());
  }
}
