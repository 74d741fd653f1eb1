package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import rindward.dashboard.request.Page;

/** Every variety, in a real browser. */
class VarietiesPageTest {
  @RegisterExtension static final OpenSite site = new OpenSite();

  @Test
  void threeAnswersStandBesideTheCheck() {
    site.open("/varieties");
    site.awaitText(
        ".variety:last-child",
        "Frostgate",
        "barely ripens here",
        "eating not judged",
        "Beside the check Winterglut",
        "Not decided yet");
    site.find(".variety summary").sendKeys(Keys.ENTER);
    site.awaitText(".variety", "Liked 7.4 of 9", "2025: 42 fruits");
    assertThat(site.browser().complaints()).isEmpty();
  }

  @Test
  void ownerDecidesWithAReasonByKeyboard() {
    site.becomeOwner();
    site.open("/varieties");
    site.awaitText(".variety:last-child", "Not decided yet");
    site.find(".variety:last-child .decided button").sendKeys(Keys.ENTER);
    site.field("reason").sendKeys("sow in April");
    site.button("Try again").sendKeys(Keys.ENTER);
    site.awaitText(".variety:last-child", "try again, sow in April");
    assertThat(
            site.shed()
                .varieties()
                .varieties(new Page(0, 9))
                .varieties()
                .get(1)
                .decided()
                .decision())
        .isEqualTo("try-again");
  }

  @ParameterizedTest
  @CsvSource({"390,844,dark", "1280,800,light"})
  void everybodyCanUseItAtAnyWidthInAnyLight(int width, int height, String scheme) {
    site.browser().size(width, height);
    site.browser().prefer("prefers-color-scheme", scheme);
    site.becomeOwner();
    site.open("/varieties");
    site.awaitText(".variety:last-child", "Frostgate");
    site.find(".variety:last-child .decided button").click();
    site.find(".variety summary").click();
    site.assertUsableByEverybody();
    assertThat(site.browser().complaints()).isEmpty();
  }
}
