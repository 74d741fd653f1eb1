package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A walk with the camera: a placard, then crates. The browser's camera shows a film of squares.
 * This browser has no reader of squares of its own, so that the shed reads them for it.
 */
class ScanTest {
  private static final Duration A_WALK = Duration.ofSeconds(60);
  private static final String PORCH = "http://shed.local:8420/place/porch";
  private static final String K4T = "http://shed.local:8420/lot/K4T";
  private static final String D1 = "http://shed.local:8420/lot/D1";

  /**
   * What browsers with a reader of their own have; this one reads nothing until it is told what.
   */
  private static final String OWN_READER =
      """
      window.BarcodeDetector = class {
        static async getSupportedFormats() { return ['qr_code']; }
        async detect() { return window.says ? [{ rawValue: window.says }] : []; }
      };
      """;

  @RegisterExtension
  static final OpenSite site =
      new OpenSite(() -> Browser.openWithCamera(SeenSquares.film(PORCH, K4T, D1)));

  @Test
  void aPlacardAndTwoCratesAreReadByTheCameraAndMoveTogether() {
    site.becomeOwner();
    scan();
    site.awaitText("dialog", "Point at a room");
    await()
        .atMost(A_WALK)
        .untilAsserted(
            () ->
                assertThat(site.browser().text("dialog")).contains("To porch", "Move 2 to porch"));
    site.assertUsableByEverybody();
    site.button("Move 2 to porch").click();

    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () ->
                assertThat(site.shed().lotDesk().said())
                    .extracting(said -> said.lot() + " to " + said.fields().get("place"))
                    .containsExactlyInAnyOrder("K4T to porch", "D1 to porch"));
  }

  @Test
  void withoutTheShedNothingIsReadAndThePhoneSaysSoAndGoesOnOnceItIsBack() {
    site.becomeOwner();
    scan();
    site.awaitText("dialog", "Point at a room");
    site.network(false);
    site.awaitText("dialog .problem", "leaves it to the shed", "offline", "Several at once");
    site.network(true);
    await()
        .atMost(A_WALK)
        .untilAsserted(
            () ->
                assertThat(site.browser().text("dialog"))
                    .contains("K4T")
                    .doesNotContain("leaves it to the shed"));
  }

  @Test
  void aPageWithoutEncryptionIsGivenNoCameraAndTakesPhotographs() {
    site.callByName();
    site.becomeOwner();
    scan();
    site.button("Take a photograph");
    site.assertUsableByEverybody();
    site.assertKeysFitGloves();

    photograph(SeenSquares.photograph(SeenSquares.beside()));
    site.awaitText("dialog .notice", "No square could be read");
    photograph(SeenSquares.photograph(SeenSquares.beside("http://elsewhere.example/room/%E0")));
    site.awaitText("dialog .problem", "/room/%E0”, which is no lot and no place here");
    photograph(SeenSquares.photograph(SeenSquares.beside(PORCH, K4T, D1)));
    site.awaitText("dialog", "To porch", "2 crates", "Move 2 to porch");
    assertThat(site.browser().text("dialog")).doesNotContain("No square");
  }

  @Test
  void aBrowserThatReadsASquareItselfDoesNotTroubleTheShed() {
    site.becomeOwner();
    site.open("/lots");
    site.script(OWN_READER + "window.says = 'D1'");
    site.button("Scan").click();
    site.button("Open D1").click();
    site.awaitText("h1", "D1");
    assertThat(
            site.script(
                "return performance.getEntriesByType('resource').map(r => r.name)"
                    + ".filter(n => n.endsWith('/api/squares'))"))
        .asList()
        .isEmpty();
  }

  @Test
  void aReaderOfTheBrowsersOwnIsEnoughInTheBarnAndWhereItSeesNothingTheShedReads() {
    site.becomeOwner();
    site.open("/lots");
    site.script(OWN_READER);
    site.button("Scan").click();
    site.awaitText("dialog", "To porch");

    site.network(false);
    site.script("window.says = 'http://shed.local:8420/lot/B1'");
    site.awaitText("dialog", "B1");
    assertThat(site.browser().text("dialog")).doesNotContain("leaves it to the shed");
    site.network(true);
  }

  private static void scan() {
    site.open("/lots");
    site.button("Scan").click();
  }

  private static void photograph(Path file) {
    site.find("dialog input[type=file]").sendKeys(file.toString());
  }
}
