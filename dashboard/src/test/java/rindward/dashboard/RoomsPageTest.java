package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import rindward.dashboard.rooms.NowView;

/** The rooms page in a real browser. */
class RoomsPageTest {

  private static final int FIRST_LOAD_BYTES = 200_000;

  private static Browser browser;

  private final InventedShed shed = new InventedShed(InventedShed.well(Instant.now(), 27.4));
  private Dashboard dashboard =
      new Dashboard(DashboardSettings.onThisMachine(0), desks(), () -> "", InstantSource.system());

  @BeforeAll
  static void openBrowser() {
    browser = Browser.open();
    Awaitility.setDefaultTimeout(Duration.ofSeconds(30));
  }

  @AfterAll
  static void closeBrowser() {
    Awaitility.reset();
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void start() {
    dashboard.start();
    browser.size(390, 844);
    browser.prefer("prefers-color-scheme", "light");
  }

  @AfterEach
  void stop() {
    // A page left open would go on asking a shed that is gone, and complain in the next test.
    browser.driver().get("about:blank");
    browser.complaints();
    dashboard.close();
  }

  @Test
  void theAirOfARoomChangesOnThePageWithoutAReload() {
    open();
    awaitText(".room .figure", "27", "4");
    browser.driver().executeScript("window.loadedOnce = true");
    publish(InventedShed.well(Instant.now(), 28.6));
    awaitText(".room .figure", "28", "6");
    assertThat(browser.driver().executeScript("return window.loadedOnce")).isEqualTo(true);
    assertThat(browser.text("live-line")).contains("Live");
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void whatIsWrongIsSaidInWordsAndNotByColourAlone() {
    publish(InventedShed.damp(Instant.now()));
    open();
    awaitText(".problem", "Needs you", "Check its cable");
    assertThat(browser.text(".value[data-standing='high'] .range")).contains("too damp");
    assertThat(
            browser
                .driver()
                .findElement(By.cssSelector(".value[data-standing='high'] svg"))
                .getAttribute("aria-label"))
        .isEqualTo("Humidity above its range, too damp");
  }

  @Test
  void aPageWhoseShedGoesAwaySaysHowOldItIsAndRecoversByItself() {
    open();
    awaitText("live-line", "Live");
    awaitText(".room .figure", "27", "4");
    int port = dashboard.port();
    dashboard.close();
    awaitText(".stale-banner", "These figures are", "The shed does not answer");
    assertThat(browser.text("live-line")).startsWith("Not live");
    assertThat(browser.text(".health")).startsWith("Last heard:");
    assertThat(browser.driver().getTitle()).contains("old) Hollin Bank Farm");

    shed.show(InventedShed.well(Instant.now(), 26.2));
    dashboard =
        new Dashboard(
            DashboardSettings.onThisMachine(port), desks(), () -> "", InstantSource.system());
    dashboard.start();
    awaitText(".room .figure", "26", "2");
    await().until(() -> elements(".stale-banner").isEmpty());
    assertThat(browser.driver().getTitle()).isEqualTo("Hollin Bank Farm");
    browser.complaints(); // The browser rightly complained of the server that was away.
  }

  @Test
  void aShedThatMeasuresNothingNewDoesNotPassForLive() {
    shed.show(InventedShed.well(Instant.now().minus(Duration.ofMinutes(7)), 27.4));
    open();
    awaitText(".stale-banner", "7 min", "measured nothing new");
    awaitText(".room .pair", "read 7 min ago");
  }

  @Test
  void aPageThatNeverReachedTheShedSaysSoAndOffersToTryAgain() {
    shed.fail(new IllegalStateException("no picture yet"));
    open();
    awaitText("main", "Nothing to show yet", "The shed could not answer", "Try now");
    browser.complaints();
  }

  @Test
  void pagesThatWereLeftHoldNoneOfTheFewConnectionsThatABrowserGrants() {
    for (int visit = 1; visit <= 8; visit++) {
      browser.driver().get("http://127.0.0.1:" + dashboard.port() + "/?visit=" + visit);
      awaitText("live-line", "Live");
    }
  }

  @Test
  void anAddressWithNothingThereSaysSoAndLeadsToTheShed() {
    browser.driver().get("http://127.0.0.1:" + dashboard.port() + "/no/such/place");
    awaitText("main", "There is nothing at this address", "The shed as it is now");
    browser.complaints(); // The browser rightly complained of the address.
  }

  @Test
  void beforeAnythingIsMeasuredThePageShowsNoFigures() {
    shed.show(InventedShed.unread(Instant.now()));
    open();
    awaitText(".room .figure", "no reading");
    assertThat(browser.text("rooms-page")).contains("No lot is entered");
    assertThat(browser.text(".room[data-attention='false']")).contains("Keeping room", "no target");
  }

  @Test
  void unitsAreChosenByKeyboardAndRemembered() {
    open();
    awaitText(".room .figure", "°C");
    browser
        .driver()
        .findElement(By.cssSelector("input[name=temperature]"))
        .sendKeys(Keys.ARROW_RIGHT);
    awaitText(".room .figure", "81", "3", "°F");
    assertThat(browser.text(".room .range")).isEqualTo("78.8 to 84.2 °F");
    browser.driver().navigate().refresh();
    awaitText(".room .figure", "°F");
    browser.driver().executeScript("localStorage.clear()");
  }

  @Test
  void whatToEatNextLeadsToItsLot() {
    open();
    awaitText(".eat", "Eat next", "Striped Otter", "eat first", "Its usual life is nearly over.");
    browser.driver().findElement(By.cssSelector(".eat li a")).sendKeys(Keys.ENTER);
    awaitText("lot-page", "Striped Otter", "What would change it");
    assertThat(browser.driver().getCurrentUrl()).endsWith("/lot/D1");
  }

  @Test
  void theFirstLoadIsSmall() {
    open();
    awaitText("live-line", "Live");
    Number bytes =
        (Number)
            browser
                .driver()
                .executeScript(
                    "return ['navigation', 'resource'].flatMap(t =>"
                        + " performance.getEntriesByType(t)).reduce((sum, e) => sum +"
                        + " e.transferSize, 0)");
    assertThat(bytes.longValue()).isBetween(10_000L, (long) FIRST_LOAD_BYTES);
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void axeFindsNothingAtAnyWidthInAnyLightLiveOrStale(int width, int height, String scheme) {
    browser.size(width, height);
    browser.prefer("prefers-color-scheme", scheme);
    publish(InventedShed.damp(Instant.now()));
    open();
    awaitText("live-line", "Live");
    browser
        .driver()
        .executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(violations()).isEmpty();
    assertThat(
            browser
                .driver()
                .executeScript("return document.documentElement.scrollWidth <= innerWidth"))
        .as("nothing hangs over the edge")
        .isEqualTo(true);

    publish(InventedShed.damp(Instant.now().minus(Duration.ofMinutes(3))));
    awaitText(".stale-banner", "3 min");
    assertThat(violations()).isEmpty();
  }

  private static List<String> violations() {
    return new AxeBuilder()
        .analyze(browser.driver()).getViolations().stream().map(Rule::toString).toList();
  }

  private void open() {
    browser.driver().get("http://127.0.0.1:" + dashboard.port() + "/");
  }

  private void publish(NowView view) {
    NowView shown = shed.show(view);
    dashboard.live().publish(() -> shown);
  }

  private Desks desks() {
    return shed.desks();
  }

  private static List<?> elements(String selector) {
    return browser.driver().findElements(By.cssSelector(selector));
  }

  private static void awaitText(String selector, String... parts) {
    await()
        .ignoreExceptions()
        .untilAsserted(() -> assertThat(browser.text(selector)).contains(parts));
  }
}
