package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Every lot, in a real browser. */
class LotsPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void whatIsToBeEatenFirstComesFirstWithItsDates() {
    site.open("/lots");
    site.awaitText(".lot-row", "D1", "Striped Otter", "eat first", "past its best", "42 left");
    site.awaitText("lots-page", "Sign in to note something", "Planned, not in yet", "Frostgate");
    assertThat(codes()).containsExactly("D1", "K4T", "B2");
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void lotsAreFoundFilteredAndSortedByKeyboard() {
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    site.field("find").sendKeys("late");
    assertThat(codes()).containsExactly("B2");
    site.field("find").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
    site.find(".filters summary").sendKeys(Keys.ENTER);
    site.field("order").sendKeys("code");
    assertThat(codes()).containsExactly("B2", "D1", "K4T");
    site.field("place").sendKeys("Curing");
    assertThat(codes()).containsExactly("B2");
    site.field("crop").sendKeys("Kabocha");
    site.awaitText("lots-page", "No lot is like that");
  }

  @Test
  void severalLotsMoveTogetherAndComeBackTogether() {
    site.becomeOwner();
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    button("Several at once").click();
    List<WebElement> rows = site.browser().driver().findElements(By.cssSelector(".lot-row"));
    rows.get(0).click();
    rows.get(1).click();
    button("Move 2 lots").click();
    button("porch").click();
    site.awaitText(".undo", "D1, K4T: Moved to porch", "There is no probe in porch");
    assertThat(site.shed().lotDesk().said())
        .extracting(InventedLots.Said::kind)
        .containsExactly("moved", "moved");
    button("Undo").click();
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(site.shed().lotDesk().said()).isEmpty());
    site.awaitText(".lot-row", "Keeping room");
  }

  @Test
  void aPlannedLotComesInWithoutTypingItsName() {
    site.becomeOwner();
    site.open("/lots");
    site.awaitText(".planned", "X7C");
    site.find(".planned button").click();
    button("4").click();
    button("0").click();
    button("Ripe").click();
    site.awaitText(".undo", "X7C: Brought in: 40, to Curing room");
    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(() -> assertThat(site.shed().lotDesk().said()).hasSize(1));
    assertThat(site.shed().lotDesk().said().get(0).fields())
        .containsEntry("variety", "Frostgate")
        .containsEntry("grade", "ripe");
  }

  @Test
  void withoutANetworkThePageOpensAgainAndSaysOfWhenItIs() {
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    await()
        .atMost(Duration.ofSeconds(20))
        .until(
            () ->
                Boolean.TRUE.equals(
                    site.script("return navigator.serviceWorker.controller !== null")));
    site.stop();
    site.browser().driver().navigate().refresh();
    site.awaitText("lots-page", "D1", "the shed does not answer");
    site.find("a.lot-row").sendKeys(Keys.ENTER);
    site.browser().driver().navigate().refresh();
    site.awaitText("lot-page", "Striped Otter", "Its usual life is nearly over.");
    site.browser().complaints();
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.becomeOwner();
    site.open("/lots");
    site.awaitText(".lot-row", "D1");
    site.assertUsableByEverybody();
    button("Bring in a lot").click();
    site.awaitText("dialog", "What comes in?");
    site.assertUsableByEverybody();
    site.assertKeysFitGloves();
    assertThat(site.browser().complaints()).isEmpty();
  }

  private static List<String> codes() {
    return site.browser().driver().findElements(By.cssSelector(".lot-row .painted")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static WebElement button(String label) {
    return site.button(label);
  }
}
