package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.dashboard.request.JsonBody;

/** Squares (ISO/IEC 18004) that the shed reads off a picture which a telephone sends. */
class SquaresTest {
  @RegisterExtension
  final ServedShed served = new ServedShed(new SetTime(Instant.parse("2026-10-03T09:15:30Z")));

  private Client owner;

  @BeforeEach
  void signIn() {
    owner = served.owner();
  }

  @Test
  void everySquareInAPictureIsRead() {
    String[] says = {
      "http://shed.local:8420/room/storage",
      "http://shed.local:8420/lot/K4T",
      "http://shed.local:8420/lot/D1"
    };
    assertThat(readOff(SeenSquares.beside(says))).containsExactlyInAnyOrder(says);
  }

  @Test
  void aBareWallSaysNothing() {
    assertThat(readOff(SeenSquares.beside())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}                         | jpeg was missing but it must be there.",
        "{\"jpeg\":\"not base64!\"} | jpeg was not in base64 but it must be.",
        "{\"jpeg\":\"\"}            | jpeg was no JPEG picture but it must be one.",
        "{\"jpeg\":\"R0lGODlh\"}    | jpeg was no JPEG picture but it must be one."
      })
  void whatIsNoPictureIsRefusedInASentence(String body, String sentence) {
    assertRefused(owner.post("/api/squares", body), 400, sentence);
  }

  @Test
  void aPictureThatWasCutShortIsRefusedOrReadButDoesNoHarm() {
    byte[] whole = SeenSquares.jpeg(SeenSquares.beside("K4T"));
    for (int length = 1; length < whole.length; length += 997) {
      byte[] part = Arrays.copyOf(whole, length);
      assertThat(send(part).statusCode()).isIn(200, 400);
    }
    assertThat(readOff(SeenSquares.beside("K4T"))).containsExactly("K4T");
  }

  @Test
  void aPictureTooLargeToBeHeldInMemoryIsNotUnpacked() {
    BufferedImage plain = new BufferedImage(4000, 3000, BufferedImage.TYPE_BYTE_BINARY);
    byte[] jpeg = SeenSquares.jpeg(plain);
    assertRefused(
        owner.post("/api/squares", body(Arrays.copyOf(jpeg, 30_000))),
        400,
        "jpeg was a picture of 4000 by 3000 pixels but it must have at most 1000000 in all.");
    String endless = "A".repeat(JsonBody.MAX_BYTES);
    assertThat(owner.post("/api/squares", "{\"jpeg\":\"" + endless + "\"}").statusCode())
        .isEqualTo(413);
  }

  /** False corner marks, which a reader tries in every three: many of them cost it for ever. */
  @ParameterizedTest
  @ValueSource(ints = {8, 12, 16, 20, 26})
  void aPictureFullOfCornerMarksIsGivenUp_andOthersAreReadMeanwhile(int marksASide) {
    byte[] marks = SeenSquares.coarse(SeenSquares.cornerMarks(marksASide));
    assertThat(marks).hasSizeLessThan(40_000);

    HttpResponse<String> answer =
        assertTimeoutPreemptively(Duration.ofSeconds(10), () -> send(marks));

    if (answer.statusCode() == 200) { // A quick machine is through with the fewest in its time.
      assertThat(marksASide).isEqualTo(8);
      assertThat(Client.json(answer).get("says")).isEmpty();
    } else {
      assertRefused(
          answer,
          400,
          "jpeg held too much that looks like a corner of a square; go closer, so that fewer are"
              + " in the picture.");
    }
    assertThat(readOff(SeenSquares.beside("K4T"))).containsExactly("K4T");
  }

  @Test
  void aPictureThatWouldHaveToBeUnpackedManyTimesIsNotUnpacked() {
    byte[] plain = SeenSquares.jpeg(SeenSquares.beside("K4T"));
    assertRefused(
        send(SeenSquares.progressive(SeenSquares.beside("K4T"))),
        400,
        "jpeg was written in several passes but it must be baseline JPEG, of at most 4 scans.");
    assertRefused(
        send(SeenSquares.scannedAgain(plain, 40)),
        400,
        "jpeg was written in several passes but it must be baseline JPEG, of at most 4 scans.");
  }

  @Test
  void onlyWhoWorksHereSendsPicturesAndTheRecordOfChangesIsNotFilledWithThem() {
    String wall = body(SeenSquares.jpeg(SeenSquares.beside()));
    assertThat(served.client().post("/api/squares", wall).statusCode()).isEqualTo(401);
    String before = owner.get("/api/audit").body();
    assertThat(owner.post("/api/squares", wall).statusCode()).isEqualTo(200);
    assertThat(owner.get("/api/audit").body()).isEqualTo(before);
  }

  private List<String> readOff(BufferedImage seen) {
    HttpResponse<String> answer = send(SeenSquares.jpeg(seen));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return StreamSupport.stream(Client.json(answer).get("says").spliterator(), false)
        .map(JsonNode::asText)
        .toList();
  }

  private HttpResponse<String> send(byte[] jpeg) {
    return owner.post("/api/squares", body(jpeg));
  }

  private static String body(byte[] jpeg) {
    return "{\"jpeg\":\"" + Base64.getEncoder().encodeToString(jpeg) + "\"}";
  }

  private static void assertRefused(HttpResponse<String> answer, int status, String sentence) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
    assertThat(Client.detail(answer)).isEqualTo(sentence);
  }
}
