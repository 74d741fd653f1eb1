package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A tasting in a real browser: planned by the owner, scored by links, closed and read. */
class TastingsPageTest {
  private static final String TASTING = "/tasting/first%20frost";

  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void tastingIsScoredFromTwoBrowsersThenClosedAndRead() {
    try (Browser ash = Browser.open()) {
      ash.size(390, 844);
      site.open("/tastings");
      String here = site.browser().driver().getCurrentUrl().replace("/tastings", "");
      ash.driver().get(here + "/taste/" + InventedTastings.secret("Ash"));
      tap(ash, "I have read this");
      score(ash, "417", "8 like very much", "Next cup");
      score(ash, "862", "5 neither like nor dislike", "Done");
      await()
          .atMost(Duration.ofSeconds(20))
          .untilAsserted(
              () -> assertThat(site.shed().tastings().answers("862")).containsEntry("liking", 5));
    }
    site.open("/taste/" + InventedTastings.secret("Rowan"));
    tap(site.browser(), "I have read this");
    score(site.browser(), "350", "7 like moderately", "Next cup");
    score(site.browser(), "194", "9 like extremely", "Done");
    site.awaitText("taste-page", "You have tasted every cup");

    site.becomeOwner();
    site.shed().tastings().fruitsOpen(1);
    site.open(TASTING);
    site.awaitText("tasting-page", "4 of 4 cups tasted", "Ash", "has tasted every cup");
    site.button("Close and open the codes").click();
    site.awaitText("tasting-page", "Nobody noted which fruits were cooked for 1 sample.");
    site.button("Those that were planned: close it").click();
    site.awaitText(
        "tasting-page",
        "Closed on",
        "Winterglut (K4T)",
        "Winterglut (K4T) is liked better than",
        "How this was worked out",
        "7.5 (1.1 to 9)");
    assertThat(site.shed().tastings().ended().isAsPlanned()).isTrue();
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void bitterCupIsStoppedAtOnceForEverybody() {
    site.open("/taste/" + InventedTastings.secret("Ash"));
    site.awaitText("taste-page", "For Ash", "Do not swallow squash that tastes bitter");
    tap(site.browser(), "I have read this");
    tap(site.browser(), "Not bitter");
    tap(site.browser(), "It is bitter after all");
    site.awaitText("taste-page", "Spit it out and do not taste it again.");
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () -> assertThat(site.shed().tastings().answers("417")).containsEntry("bitter", 1));
    site.open("/taste/" + InventedTastings.secret("Rowan"));
    tap(site.browser(), "I have read this");
    score(site.browser(), "350", "7 like moderately", "Next cup");
    site.awaitText("taste-page", "Cup 194", "Somebody found this food bitter. Do not taste it.");
  }

  @Test
  void answersWaitOnThePhoneUntilTheShedAnswers() {
    site.open("/taste/" + InventedTastings.secret("Ash"));
    tap(site.browser(), "I have read this");
    site.network(false);
    try {
      tap(site.browser(), "Not bitter");
      tap(site.browser(), "8 like very much");
      site.awaitText("taste-page", "1 answer waits on this phone");
    } finally {
      site.network(true);
    }
    await()
        .atMost(Duration.ofSeconds(40))
        .untilAsserted(
            () -> assertThat(site.shed().tastings().answers("417")).containsEntry("liking", 8));
    assertThat(site.shed().tastings().sayings()).isEqualTo(1);
  }

  @Test
  void theTastersPageShowsNothingElseOfTheFarm() {
    site.open("/taste/" + InventedTastings.secret("Ash"));
    site.awaitText("taste-page", "For Ash");
    assertThat(site.browser().driver().findElements(By.cssSelector("nav, footer"))).isEmpty();
    site.open("/taste/wrong");
    site.awaitText("taste-page", "This link opens no tasting");
  }

  @Test
  void ownerPlansATastingByKeyboard() {
    site.becomeOwner();
    site.open("/tastings");
    site.button("Plan a tasting").sendKeys(Keys.ENTER);
    site.awaitText("plan-form", "K4T", "D1", "its taste will say nothing of the variety");
    assertThat(site.find(".lots-to-taste").getText())
        .as("those that can speak come first")
        .containsSubsequence("D1", "K4T", "B2", "44 % cured");
    site.field("name").sendKeys("solstice");
    for (String lot : new String[] {"K4T", "D1"}) {
      site.find("[name=lot][value=" + lot + "]").sendKeys(Keys.SPACE);
    }
    site.field("tasters").sendKeys("Ash\nRowan");
    site.find(".plan summary").sendKeys(Keys.ENTER);
    site.field("twice").sendKeys("K4T");
    site.field("cups").sendKeys(Keys.ENTER);
    site.awaitText("tasting-page", "Under way");
    assertThat(site.shed().tastings().planned())
        .singleElement()
        .satisfies(
            plan -> {
              assertThat(plan.tasters()).containsExactly("Ash", "Rowan");
              assertThat(plan.twice()).isEqualTo("K4T");
              assertThat(plan.cups()).isEqualTo(6);
            });
  }

  @Test
  void theCookNotesAFruit_andTakesTheNoteBack() {
    site.becomeOwner();
    site.open(TASTING);
    site.button("Show what is in the cups").click();
    site.button("Fruit 1 is cooked").click();
    site.awaitText("cook-form", "Minutes");
    site.field("minutes").sendKeys("45");
    site.field("minutes").submit();
    site.awaitText(".pots", "Fruit 1, cooked: done in 45 min");
    assertThat(site.shed().tastings().note("K4T").minutes()).isEqualTo(45);
    site.button("Take back").sendKeys(Keys.ENTER);
    await()
        .untilAsserted(
            () -> assertThat(site.browser().text(".pots")).doesNotContain("Fruit 1, cooked"));
    assertThat(site.shed().tastings().note("K4T")).isNull();
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.becomeOwner();
    site.open("/tastings");
    site.button("Plan a tasting").click();
    site.awaitText("plan-form", "K4T");
    site.assertUsableByEverybody();
    site.open(TASTING);
    site.button("Show what is in the cups").click();
    site.awaitText("kitchen-sheet", "417 holds K4T");
    site.assertUsableByEverybody();
    site.open("/taste/" + InventedTastings.secret("Ash"));
    tap(site.browser(), "I have read this");
    tap(site.browser(), "Not bitter");
    tap(site.browser(), "8 like very much");
    site.awaitText("taste-page", "sweetness");
    site.assertUsableByEverybody();
    assertThat(
            site.script(
                "return [...document.querySelectorAll('taste-page button')]"
                    + ".filter(b => b.getBoundingClientRect().height < 48"
                    + " || b.getBoundingClientRect().width < 48).map(b => b.outerHTML)"))
        .asList()
        .isEmpty();
    site.open(TASTING);
    site.button("Close and open the codes").click();
    site.button("Close it now").click();
    site.awaitText("tasting-result", "Winterglut");
    site.assertUsableByEverybody();
    assertThat(site.browser().complaints()).isEmpty();
  }

  private static void score(Browser phone, String code, String liking, String onward) {
    await()
        .atMost(Duration.ofSeconds(20))
        .ignoreExceptions()
        .until(() -> phone.text(".cup h2").equals("Cup " + code));
    tap(phone, "Not bitter");
    tap(phone, liking);
    tap(phone, onward);
  }

  /** Taps the key that says this, wherever on the page it lies. */
  private static void tap(Browser phone, String label) {
    WebElement key =
        await()
            .atMost(Duration.ofSeconds(20))
            .ignoreExceptions()
            .until(
                () ->
                    phone.driver().findElements(By.tagName("button")).stream()
                        .filter(b -> b.getText().strip().replaceAll("\\s+", " ").equals(label))
                        .findFirst()
                        .orElseThrow(),
                found -> found != null);
    phone.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", key);
    key.click();
  }
}
