package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import rindward.dashboard.alarms.AlarmsDesk.Answer;

/** Alarms on the front page and on their own, in a real browser. */
class AlarmsPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @BeforeEach
  void somethingIsWrong() {
    site.shed().alarms().begin();
  }

  @Test
  void theFrontPageBeginsWithWhatIsOpenAndWhatToDo() {
    site.open("/");
    site.awaitText("open-alarms", "Urgent:", "Fruit too cold", "Keeping room", "door is shut");
    site.find("open-alarms a").sendKeys(Keys.ENTER);
    site.awaitText(
        "alarms-page", "The fruit is at 9.6", "Nobody has seen it yet", "Sign in to answer");
    assertThat(site.browser().driver().findElements(By.cssSelector(".alarm button"))).isEmpty();
  }

  @Test
  void anAlarmIsAcknowledgedByKeyboardWithWho() {
    site.becomeOwner();
    site.open("/alarms");
    answer("I have seen it");
    site.awaitText("alarm-card", "Somebody has seen it");
    site.awaitText("alarm-history", "was seen (Wren)");
    Answer answer = site.shed().alarms().answers().get(0);
    assertThat(answer.alarm()).isEqualTo("chilling@Keeping room");
    assertThat(answer.answer()).isEqualTo("acknowledged");
    assertThat(answer.by()).isEqualTo("Wren");
  }

  @Test
  void anAlarmIsMadeQuietWithAnEnd() {
    site.becomeOwner();
    site.open("/alarms");
    site.awaitText("alarms-page", "Too dry");
    site.find("button[aria-label^='Quiet for a while: Too dry']").sendKeys(Keys.ENTER);
    site.awaitText("alarms-page", "4 hours");
    site.find("button[aria-label^='4 hours: Too dry']").sendKeys(Keys.ENTER);
    site.awaitText("alarms-page", "Quiet because somebody said so", "Call again");
    Instant until = site.shed().alarms().answers().get(0).until();
    assertThat(until)
        .isBetween(Instant.now().plusSeconds(3 * 3600), Instant.now().plusSeconds(4 * 3600));
  }

  @Test
  void aLockOutIsLiftedOnlyWithTheCodeThatStandsOnTheBoard() {
    site.shed().alarms().lockOut();
    site.becomeOwner();
    site.open("/alarms");
    site.awaitText("lock-out", "Heat is locked out", "lock the heater’s breaker", ".lockout");
    assertThat(
            site.browser()
                .driver()
                .findElements(By.cssSelector(".ways > [aria-label^='Reset it: The heater']")))
        .hasSize(1);
    site.find("lock-out input").sendKeys("384172", Keys.ENTER);
    site.awaitText("alarms-page", "Too dry");
    Awaitility.await()
        .untilAsserted(
            () ->
                assertThat(site.browser().driver().findElements(By.cssSelector("lock-out")))
                    .isEmpty());
    Answer answer = site.shed().alarms().answers().get(0);
    assertThat(answer.answer()).isEqualTo("reset");
    assertThat(answer.code()).isEqualTo("384172");
  }

  @Test
  void workingHereIsOneTapAndEndsByItself() {
    site.becomeOwner();
    site.open("/alarms");
    site.awaitText("alarms-page", "I work here now");
    site.find("button[aria-label='I work here now: Curing room']").sendKeys(Keys.ENTER);
    site.awaitText("alarms-page", "Somebody works here until", "I am done");
  }

  @Test
  void theTableIsShown() {
    site.open("/alarms");
    site.awaitText("alarms-page", "What the shed calls about");
    site.find(".rules summary").sendKeys(Keys.ENTER);
    site.awaitText(
        "alarm-rules", "Wakes you at any hour", "counts after", "Air colder than wanted");
  }

  @Test
  void aServerThatWentAwayAndCameBackIsShownAgainByItself() {
    site.open("/alarms");
    site.awaitText("alarms-page", "Fruit too cold");
    site.restart();
    site.shed().alarms().begin();
    site.awaitText("alarms-page", "Fruit too cold");
    site.awaitText("live-line", "Live");
    site.browser().complaints(); // The browser rightly noted the server's absence.
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.browser().prefer("prefers-reduced-motion", "reduce");
    site.becomeOwner();
    site.open("/");
    site.awaitText("open-alarms", "Fruit too cold");
    site.assertUsableByEverybody();
    site.open("/alarms");
    site.awaitText("alarms-page", "I have seen it", "What has been");
    site.find(".rules summary").sendKeys(Keys.ENTER);
    site.awaitText("alarm-rules", "Wakes you");
    site.assertUsableByEverybody();
    for (WebElement button :
        site.browser().driver().findElements(By.cssSelector(".alarm button, .alarm summary"))) {
      assertThat(button.getRect().height).as(button.getText()).isGreaterThanOrEqualTo(48);
    }
  }

  private static void answer(String how) {
    site.awaitText("alarms-page", how);
    site.find("button[aria-label^='" + how + "']").sendKeys(Keys.ENTER);
  }
}
