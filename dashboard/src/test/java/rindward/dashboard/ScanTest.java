package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * A walk with the camera: a placard, then crates. The browser's camera shows a film of squares.
 * This browser has no reader of squares of its own, so another one stands in: the picture that the
 * page hands over is read by ZXing.
 */
class ScanTest {
  private static final String READER =
      """
      window.BarcodeDetector = class {
        async detect(video) {
          const canvas = document.createElement('canvas');
          canvas.width = video.videoWidth;
          canvas.height = video.videoHeight;
          canvas.getContext('2d').drawImage(video, 0, 0);
          window.seen = canvas.toDataURL('image/png');
          return (window.read ?? []).map((rawValue) => ({ rawValue }));
        }
      };
      """;

  @RegisterExtension
  static final OpenSite site =
      new OpenSite(
          () ->
              Browser.openWithCamera(
                  FilmOfSquares.of(
                      "http://shed.local:8420/place/porch",
                      "http://shed.local:8420/lot/K4T",
                      "http://shed.local:8420/lot/D1")));

  @Test
  void aPlacardAndTwoCratesAreReadByTheCameraAndMoveTogether() {
    site.browser()
        .driver()
        .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", READER));
    site.becomeOwner();
    site.open("/lots");
    site.button("Scan").click();
    site.awaitText("dialog", "Point at a room");

    await()
        .atMost(Duration.ofSeconds(60))
        .untilAsserted(
            () -> {
              site.script("window.read = arguments[0]", readByAnother());
              assertThat(site.browser().text("dialog")).contains("To porch", "Move 2 to porch");
            });
    site.button("Move 2 to porch").click();

    await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () ->
                assertThat(site.shed().lotDesk().said())
                    .extracting(said -> said.lot() + " to " + said.fields().get("place"))
                    .containsExactlyInAnyOrder("K4T to porch", "D1 to porch"));
  }

  private static List<String> readByAnother() {
    Object seen = site.script("return window.seen ?? null");
    return seen == null
        ? List.of()
        : FilmOfSquares.read((String) seen).map(List::of).orElse(List.of());
  }
}
