package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Others in the network do what they like; the phones that belong to the farm are answered. */
class HostileNetworkTest {
  private static final Duration SOON = Duration.ofSeconds(2);
  private static final String OTHER = "127.0.0.2";

  @RegisterExtension final ServedShed served = new ServedShed(InstantSource.system());
  private final List<Stranger> strangers = new ArrayList<>();

  @AfterEach
  void leave() {
    strangers.forEach(Stranger::close);
  }

  @Test
  void manyUnfinishedRequests_fromOneAddress_areEndedButForAFew() {
    for (int i = 0; i < 400; i++) {
      stranger(OTHER).says("GET /api/now HTTP/1.1\r\nHost: 127.0.0.1\r\nX-Wait: ");
    }

    await().until(() -> strangers.stream().filter(Stranger::isOpen).count() <= 16);
    assertAnswered("/api/now", "/metrics");
  }

  @Test
  void manyUnfinishedRequests_fromManyAddresses_leaveAPlaceForWhoComesNew() {
    for (int i = 0; i < 400; i++) {
      stranger("127.0.1." + (i % 200)).says("GET /api/now HTTP/1.1\r\nHost: 127.0.0.1\r\n");
    }

    assertAnswered("/api/now", "/metrics");
    await().until(() -> strangers.stream().filter(Stranger::isOpen).count() <= 72);
  }

  @Test
  void aNameThatIsNotTheShedsOwn_isNotAnsweredTo() {
    String head = "GET /api/now HTTP/1.1\r\nHost: elsewhere.example:8420\r\n\r\n";

    assertThat(stranger(OTHER).asks(head)).startsWith("HTTP/1.1 421");
    assertThat(stranger(OTHER).asks(head.replace("elsewhere.example", "localhost")))
        .startsWith("HTTP/1.1 200");
  }

  @Test
  void slowBodies_holdUpNobody() {
    for (int i = 0; i < 16; i++) {
      stranger(OTHER)
          .says(
              "POST /api/sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\n"
                  + "Content-Length: 600\r\n\r\n{");
    }

    assertAnswered("/api/now", "/metrics");
  }

  @Test
  void readersThatTakeNothing_holdUpNobody() {
    for (int i = 0; i < 16; i++) {
      Stranger reader = stranger(OTHER);
      for (int again = 0; again < 40; again++) {
        reader.says("GET /api/openapi.json HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n");
      }
    }

    assertAnswered("/api/now", "/metrics");
  }

  @Test
  void headTooLongOrWithTooManyFields_isRefused() {
    for (String fields :
        new String[] {"X-Long: " + "x".repeat(4_100) + "\r\n", "X: y\r\n".repeat(61)}) {
      String answer =
          stranger(OTHER).asks("GET /api/now HTTP/1.1\r\nHost: 127.0.0.1\r\n" + fields + "\r\n");
      assertThat(answer).startsWith("HTTP/1.1 431 ");
    }
  }

  @Test
  void bodyTooLong_isRefusedBeforeItIsSent_andNothingMoreIsRead() {
    Stranger tells = stranger(OTHER);
    assertThat(
            tells.asks(
                "POST /api/sign-in HTTP/1.1\r\n"
                    + "Host: 127.0.0.1\r\n"
                    + "Content-Type: application/json\r\n"
                    + "Content-Length: 1000000000\r\n\r\n"
                    + "{"))
        .startsWith("HTTP/1.1 413 ")
        .contains("The body must be at most 65536 bytes.");
    await().until(() -> !tells.isOpen());

    Stranger tellsNot = stranger(OTHER);
    String chunk = "1000\r\n" + "x".repeat(4_096) + "\r\n";
    assertThat(
            tellsNot.asks(
                "POST /api/sign-in HTTP/1.1\r\n"
                    + "Host: 127.0.0.1\r\n"
                    + "Content-Type: application/json\r\n"
                    + "Transfer-Encoding: chunked\r\n\r\n"
                    + chunk.repeat(17)))
        .startsWith("HTTP/1.1 413 ");
    await().until(() -> !tellsNot.isOpen());
  }

  @Test
  void bodyALittleTooLong_isHeardOut_soThatTheAnswerIsNotLost() {
    Stranger phone = stranger(OTHER);
    phone.says(
        "POST /api/sign-in HTTP/1.1\r\n"
            + "Host: 127.0.0.1\r\n"
            + "Content-Type: application/json\r\n"
            + "Content-Length: 71680\r\n\r\n");
    for (int sent = 0; sent < 70; sent++) {
      assertThat(phone.canSay("x".repeat(1_024))).as("kilobyte %s", sent).isTrue();
    }
    assertThat(phone.asks("")).startsWith("HTTP/1.1 413 ");
    await().until(() -> !phone.isOpen());
  }

  @Test
  void bodyInCrumbs_arrivesWhole() {
    Stranger phone = stranger(OTHER);
    phone.says(
        "POST /api/sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\n"
            + "Content-Length: 36\r\n\r\n");
    "{\"name\":\"Wren\",\"password\":\"a gourd\"}"
        .chars()
        .forEach(letter -> phone.says(String.valueOf((char) letter)));

    assertThat(phone.asks("")).startsWith("HTTP/1.1 401 ");
  }

  @Test
  void liveStreams_areLimitedForEachAddress_andWhoHasSignedInComesFirst() throws IOException {
    Client owner = served.owner();
    String cookie = owner.cookie();
    String ask = "GET /api/live HTTP/1.1\r\nHost: 127.0.0.1\r\n";
    for (int address = 1; address <= 8; address++) {
      for (int i = 0; i < 8; i++) {
        stranger("127.0.2." + address).says(ask + "\r\n");
      }
    }
    await().until(() -> served.dashboard().live().clients() == 64);

    assertThat(stranger("127.0.2.1").asks(ask + "\r\n")).startsWith("HTTP/1.1 503 ");
    assertThat(stranger("127.0.2.9").asks(ask + "\r\n")).startsWith("HTTP/1.1 503 ");
    assertThat(stranger("127.0.0.1").asks(ask + "Cookie: " + cookie + "\r\n\r\n"))
        .startsWith("HTTP/1.1 200 ");
    assertThat(served.dashboard().live().clients()).isEqualTo(64);
  }

  private void assertAnswered(String... paths) {
    for (String path : paths) {
      HttpResponse<String> answer =
          assertTimeoutPreemptively(SOON, () -> served.client().get(path));
      assertThat(answer.statusCode()).as(path).isEqualTo(200);
    }
  }

  private Stranger stranger(String from) {
    Stranger stranger = new Stranger(from, served.dashboard().port());
    strangers.add(stranger);
    return stranger;
  }
}
