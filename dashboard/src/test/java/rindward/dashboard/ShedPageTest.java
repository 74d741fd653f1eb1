package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import rindward.dashboard.shed.ManualCommand;

/** Signing in, and switching by hand, in a real browser. */
class ShedPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void whoHasNotSignedInSeesEverythingAndIsToldHowToSwitch() {
    site.open("/shed");
    site.awaitText("shed-page", "Heater", "0.3 degrees below", "Check the plug", "squash-heart");
    site.awaitText("shed-page", "Sign in to switch by hand");
    assertThat(site.browser().driver().findElements(By.cssSelector(".parts button"))).isEmpty();
    site.find(".parts .ways a").sendKeys(Keys.ENTER);
    site.awaitText("sign-in-form", "The program showed a code");
  }

  @Test
  void anOutputIsSwitchedByKeyboardUntilTheTimeThatTheButtonNames() {
    site.becomeOwner();
    site.open("/shed");
    choose("Heater");
    String does = site.browser().text("dialog .does");
    assertThat(does).startsWith("Heater off until ");
    site.find("dialog .does").sendKeys(Keys.ENTER);
    site.awaitText(".by-hand", "Off by hand until " + does.substring(17), "Wren");
    ManualCommand command = site.shed().parts().commands().get(0);
    assertThat(command.on()).isFalse();
    assertThat(command.by()).isEqualTo("Wren");
    assertThat(command.until())
        .isBetween(Instant.now().plusSeconds(17 * 60), Instant.now().plusSeconds(20 * 60));

    site.browser().driver().findElements(By.cssSelector(".ways button")).get(1).click();
    site.awaitText("shed-page", "0.3 degrees below");
    assertThat(site.browser().driver().findElements(By.cssSelector(".by-hand"))).isEmpty();
  }

  @Test
  void copiesAndFilesAreThereToBeTakenAway() {
    site.open("/shed");
    site.awaitText(".record", "Everything was last copied at", "12.4 MB", "Heater, Curing room:");
    assertThat(files()).contains("/api/record/lots.csv").doesNotContain("/api/record/copy.db");
    site.becomeOwner();
    site.open("/shed");
    site.awaitText(".record", "The newest copy of everything");
    assertThat(files())
        .containsExactly(
            "/api/record/lots.csv",
            "/api/rooms/Curing%20room/samples.csv?days=400",
            "/api/rooms/Keeping%20room/samples.csv?days=400",
            "/api/record/copy.db");
  }

  private static List<String> files() {
    return site.browser().driver().findElements(By.cssSelector(".files a")).stream()
        .map(link -> link.getDomAttribute("href"))
        .toList();
  }

  @Test
  void aRefusalStandsInTheDialogInTheShedsOwnWords() {
    site.becomeOwner();
    site.open("/shed");
    choose("Humidifier");
    site.find("dialog .does").sendKeys(Keys.ENTER);
    site.awaitText("dialog [role=alert]", "Not done:", "80 % is the safe limit");
    site.find("dialog").sendKeys(Keys.ESCAPE);
    site.awaitText("shed-page", "Humidifier");
    assertThat(site.browser().driver().findElements(By.cssSelector("dialog"))).isEmpty();
    assertThat(site.shed().parts().commands()).isEmpty();
    site.browser().complaints(); // The browser rightly noted the answer 409.
  }

  @Test
  void aWrongPasswordIsSaidAndTheRightOneSignsIn() {
    site.becomeOwner();
    site.find("you-page > .ways button").click();
    site.awaitText("sign-in-form", "sign in once on this device");
    site.field("name").sendKeys("Wren");
    site.field("password").sendKeys("a green gourd");
    site.field("password").submit();
    site.awaitText("sign-in-form [role=alert]", "The name or the password is wrong.");
    site.field("password").clear();
    site.field("password").sendKeys("a russet gourd");
    site.field("password").submit();
    site.awaitText(".masthead .you", "Wren");
    site.browser().complaints(); // The browser rightly noted the answer 401.
  }

  @Test
  void scriptInATextFieldStaysText() {
    site.becomeOwner();
    site.field("label").sendKeys("<img src=x onerror=\"window.bad=1\"><b>barn</b>");
    site.field("label").submit();
    site.awaitText("own-tokens", "<b>barn</b>", "Copy it now", "rind_");
    site.awaitText("own-tokens ul", "onerror");
    assertThat(site.script("return window.bad")).isNull();
    assertThat(site.browser().complaints()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.browser().prefer("prefers-reduced-motion", "reduce");
    site.open("/you");
    site.awaitText("sign-in-form", "code");
    site.assertUsableByEverybody();
    site.becomeOwner();
    site.awaitText("farm-people", "became the owner");
    site.assertUsableByEverybody();
    site.open("/shed");
    site.awaitText("shed-page", "Switch by hand");
    site.assertUsableByEverybody();
    choose("Heater");
    site.assertUsableByEverybody();
  }

  private static void choose(String output) {
    String button = "button[aria-label^='Switch by hand: " + output + "']";
    site.awaitText("shed-page", "Switch by hand");
    site.find(button).sendKeys(Keys.ENTER);
    site.awaitText("dialog", output, "runs by itself again");
  }
}
