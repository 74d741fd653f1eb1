package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** One lot, and what is noted of it in the shed, in a real browser. */
class LotPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @AfterEach
  void networkComesBack() {
    site.network(true);
  }

  @Test
  void theVerdictIsSaidWithItsReasonsAndWhatWouldChangeIt() {
    site.open("/lot/k4t");
    site.awaitText("lot-page", "Winterglut", "ready: dry and mealy", "past its best");
    site.awaitText(
        "lot-page",
        "Its usual life is nearly over.",
        "A fruit that is still dry would change it.",
        "How sure: measured.");
    site.awaitText("lot-page", "92 % keep past day 40", "blind, session first table", "field");
    site.awaitText("lot-page", "Liked best from day 45 to 60", "large: a blind session");
    assertThat(site.browser().driver().findElements(By.cssSelector(".doing"))).isEmpty();
    awaitChart();
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void everyTasteIsShown_withWhyItDoesNotCount() {
    site.open("/lot/K4T");
    site.awaitText(
        "lot-page", "liked 7 of 9", "says nothing of the variety: not yet cured", "liked 6.8 of 9");
  }

  @Test
  void afterAnUnripeFruit_aSecondOneIsPlannedInOneTap() {
    open("K4T");
    site.awaitText(".second-fruit", "Cook a second one beside one of D1", "If it is ripe");
    site.button("Plan it").click();
    site.awaitText(".second-fruit", "It is planned.");
    assertThat(site.shed().tastings().planned())
        .anySatisfy(
            plan -> {
              assertThat(plan.name()).isEqualTo("second fruit of K4T");
              assertThat(plan.samples()).extracting("lot").containsExactly("K4T", "D1");
              assertThat(plan.tasters()).containsExactly("Wren", "Ash");
              assertThat(plan.method()).isEqualTo("baked");
              assertThat(plan.temperatureC()).isEqualTo(190.0);
            });
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void theAccountOpensToItsThreeValues() {
    site.open("/lot/K4T");
    site.awaitText(".facts .account summary", "210 h of 240 h in range while it cured");
    site.find(".facts .account summary").sendKeys(Keys.ENTER);
    site.awaitText(".facts .account dl", "Certain", "180 h", "Measured", "Possible", "222 h");
  }

  @Test
  void aScriptInANoteIsATextAndNothingElse() {
    site.open("/lot/K4T");
    site.awaitText(".story", "<img src=x onerror=alert(1)> grew on the wet side");
    assertThat(site.browser().driver().findElements(By.cssSelector(".story img"))).isEmpty();
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void aLotIsMovedInTwoTapsFromItsPageAndTheMoveUndone() {
    open("K4T");
    site.button("Move").click();
    site.button("Curing room").click();
    site.awaitText(".undo", "K4T: Moved to Curing room");
    site.awaitText(".story", "Moved to Curing room", "Wren");
    assertThat(said("place")).containsExactly("Curing room");
    site.button("Undo").click();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(site.shed().lotDesk().said()).isEmpty());
  }

  @Test
  void aLotIsCulledWithItsCause() {
    open("K4T");
    site.button("Cull").click();
    site.find("[aria-label='One more']").click();
    site.button("Soft").click();
    site.awaitText(".undo", "K4T: Lost 2: soft");
    site.awaitText("lot-page header", "44 left");
    assertThat(said("cause")).containsExactly("soft");
  }

  @Test
  void afterATaggedFruitTheNextOneAppearsByItself() {
    open("K4T");
    site.button("Weigh").click();
    site.awaitText("dialog [aria-pressed=true]", "tag 1");
    List.of("1", ".", "3", "9").forEach(key -> site.button(key).click());
    site.button("Note it, next fruit").click();
    site.awaitText("dialog .noted", "Weighed fruit tag 1: 1.39 kg");
    site.awaitText("dialog [aria-pressed=true]", "tag 2");
    site.field("figure").sendKeys("1.365");
    site.button("Note it, next fruit").click();
    site.awaitText("dialog .noted", "tag 2");
    site.button("Finished").click();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(said("weight_g")).containsExactly("1390", "1365"));
  }

  @Test
  void anEntryIsCorrectedWhereItStands() {
    open("K4T");
    site.button("Cull").click();
    site.button("Rot").click();
    site.awaitText(".story", "Lost 1: rot");
    site.button("Close").click();
    site.find(".story li button").click();
    site.awaitText("dialog", "Correct an entry of K4T");
    site.field("cause").sendKeys("Soft");
    site.button("Note it").click();
    site.awaitText(".story", "Lost 1: soft");
  }

  @Test
  void withoutANetworkEntriesWaitInSightAndGoOutOnceInOrder() {
    open("K4T");
    loseNetwork();
    site.button("Cull").click();
    site.button("Soft").click();
    site.awaitText(".outbox", "1 entry waits on this phone", "K4T: Lost 1: soft");
    site.button("Move").click();
    site.button("porch").click();
    site.awaitText(".outbox", "2 entries wait on this phone");
    site.awaitText("lot-page header", "porch", "45 left");
    assertThat(site.shed().lotDesk().said()).isEmpty();
    site.network(true);
    site.script("dispatchEvent(new Event('online'))");
    await()
        .atMost(Duration.ofSeconds(30))
        .untilAsserted(
            () ->
                assertThat(site.shed().lotDesk().said())
                    .extracting(InventedLots.Said::kind)
                    .containsExactly("culled", "moved"));
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> site.browser().driver().findElements(By.cssSelector(".outbox")).isEmpty());
    site.browser().complaints(); // The browser rightly noted the lost network.
  }

  @Test
  void whatIsRefusedLaterStaysWithItsSentenceUntilSomebodyDecides() {
    open("K4T");
    loseNetwork();
    site.button("Cull").click();
    site.button("Soft").click();
    site.awaitText(".outbox", "1 entry waits");
    site.shed().lotDesk().weighElsewhere("K4T");
    site.network(true);
    site.script("dispatchEvent(new Event('online'))");
    site.awaitText(".refused", "1 entry was not taken", "somebody else has changed K4T since");
    assertThat(site.shed().lotDesk().said()).hasSize(1);
    site.button("I have looked; send it").click();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(site.shed().lotDesk().said()).hasSize(2));
    site.browser().complaints(); // The browser rightly noted the answer 412.
  }

  @Test
  void weightsAreTypedAndShownInTheUnitOfTheReader() {
    open("K4T");
    site.script(
        "localStorage.setItem('rindward.units', '{\"temperature\":\"C\",\"mass\":\"lb\"}')");
    site.browser().driver().navigate().refresh();
    site.awaitText(".facts", "3.11 lb");
    site.button("Weigh").click();
    site.awaitText("dialog .unit", "lb");
    site.field("figure").sendKeys("3");
    site.button("Note it, next fruit").click();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(said("weight_g")).containsExactly("1361"));
  }

  @Test
  void aLotThatIsNotHereIsSaidSo() {
    site.open("/lot/Z9Z");
    site.awaitText("main", "There is no lot Z9Z here");
    site.browser().complaints(); // The browser rightly noted the answer 404.
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    open("K4T");
    awaitChart();
    site.script("document.querySelectorAll('details').forEach(d => d.open = true)");
    site.assertUsableByEverybody();
    for (String way : List.of("Move", "Weigh", "Cull", "Eat or use", "Recount", "Note")) {
      site.button(way).sendKeys(Keys.ENTER);
      site.awaitText("dialog h2", way);
      site.assertUsableByEverybody();
      site.assertKeysFitGloves();
      site.find("dialog").sendKeys(Keys.ESCAPE);
      await()
          .atMost(Duration.ofSeconds(10))
          .until(() -> site.browser().driver().findElements(By.cssSelector("dialog")).isEmpty());
    }
    assertThat(site.browser().complaints()).isEmpty();
  }

  private static void open(String code) {
    site.becomeOwner();
    site.open("/lot/" + code);
    site.awaitText(".doing", "Move");
  }

  private static List<String> said(String field) {
    return site.shed().lotDesk().said().stream().map(s -> s.fields().get(field)).toList();
  }

  /** A moment after the page could be read: it has by then what opens over it. */
  private static void loseNetwork() {
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> Boolean.TRUE.equals(site.script("return !!customElements.get('say-sheet')")));
    site.network(false);
  }

  private static void awaitChart() {
    await()
        .atMost(Duration.ofSeconds(30))
        .ignoreExceptions()
        .until(() -> site.find("air-chart canvas").isDisplayed());
  }
}
