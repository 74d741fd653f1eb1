package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.dashboard.live.LiveHub;
import rindward.dashboard.signin.SignIn;

/** What an open page receives, over real connections. */
class LiveStreamTest {

  private static final Duration HEARTBEAT = Duration.ofMillis(400);

  private final List<OpenStream> streams = new ArrayList<>();
  private final List<Throwable> kept = new CopyOnWriteArrayList<>();
  private Dashboard dashboard;

  @BeforeEach
  void start() {
    InventedShed shed = new InventedShed(InventedShed.well(Instant.EPOCH, 27.4));
    dashboard =
        new Dashboard(
            DashboardSettings.onThisMachine(0),
            shed.desks(),
            () -> "",
            InstantSource.system(),
            new SignIn(new RememberedSignIn(), InstantSource.system(), 4),
            new Site(SiteSource.OWN),
            HEARTBEAT,
            task -> this::supervise);
    dashboard.start();
  }

  private void supervise(Runnable turn) {
    try {
      turn.run();
    } catch (RuntimeException | Error e) {
      kept.add(e);
    }
  }

  @AfterEach
  void stop() {
    streams.forEach(OpenStream::close);
    dashboard.close();
  }

  @Test
  void aNewPageGetsTheLatestStateFirst() {
    publish("older");
    publish("latest");
    OpenStream page = open();
    awaitState(page, "latest");
    assertThat(page.lines())
        .contains("retry: 3000")
        .anyMatch(line -> line.startsWith("Content-Type: text/event-stream"))
        .doesNotContain("data: {\"state\":\"older\"}");
  }

  @Test
  void aFaultInOneTurn_isKeptByTheSupervisor_andTheNextStateComesAsBefore() {
    OpenStream page = open();
    publish("first");
    awaitState(page, "first");
    dashboard
        .live()
        .publish(
            () -> {
              throw new StackOverflowError("a test says so");
            });
    await().until(() -> !kept.isEmpty());
    assertThat(kept).singleElement().isInstanceOf(StackOverflowError.class);

    publish("second");
    awaitState(page, "second");
    long heartbeats = page.lines().stream().filter(":"::equals).count();
    await()
        .untilAsserted(
            () ->
                assertThat(page.lines())
                    .filteredOn(":"::equals)
                    .hasSizeGreaterThan((int) heartbeats));
  }

  @Test
  void everyOpenPageGetsEachNewStateWithAGrowingId() {
    OpenStream one = open();
    OpenStream other = open();
    await().until(() -> dashboard.live().clients() == 2);
    for (String state : List.of("first", "second")) {
      publish(state);
      for (OpenStream page : List.of(one, other)) {
        awaitState(page, state);
      }
    }
    assertThat(one.lines().stream().filter(line -> line.startsWith("id: ")))
        .extracting(line -> line.substring(line.indexOf('-')))
        .containsExactly("-1", "-2");
  }

  @Test
  void aQuietShedStillSendsHeartbeats() {
    OpenStream page = open();
    await()
        .untilAsserted(
            () -> assertThat(page.lines()).filteredOn(":"::equals).hasSizeGreaterThan(2));
  }

  @Test
  void aPageThatTakesNothingHoldsUpNeitherThePublisherNorOtherPagesAndIsDropped() {
    Map<String, String> large = Map.of("state", "x".repeat(100_000));
    streams.add(OpenStream.deaf(dashboard.port()));
    OpenStream page = open();
    await().until(() -> dashboard.live().clients() == 2);

    assertTimeoutPreemptively(
        Duration.ofSeconds(1),
        () -> IntStream.range(0, 2000).forEach(n -> dashboard.live().publish(() -> large)));
    publish("last");
    awaitState(page, "last");

    // The system buffers some megabytes for a deaf client; after that its time runs out.
    await()
        .until(
            () -> {
              dashboard.live().publish(() -> large);
              return dashboard.live().clients() == 1;
            });
    assertThat(page.ended()).isFalse();
  }

  @Test
  void aPageThatGoesAwayIsForgotten() {
    OpenStream page = open();
    await().until(() -> dashboard.live().clients() == 1);
    page.close();
    await().until(() -> dashboard.live().clients() == 0);
  }

  @Test
  void onePageTooManyIsAskedToComeBackLater() {
    for (int i = 0; i < LiveHub.MAX_CLIENTS; i++) {
      openFrom("127.0.0." + (2 + i / 8));
    }
    await().until(() -> dashboard.live().clients() == LiveHub.MAX_CLIENTS);
    OpenStream tooMany = open();
    await()
        .untilAsserted(
            () ->
                assertThat(tooMany.lines())
                    .contains("HTTP/1.1 503 Service Unavailable", "Retry-After: 15")
                    .anyMatch(line -> line.contains("Too many pages are open")));

    streams.get(0).close();
    await().until(() -> dashboard.live().clients() < LiveHub.MAX_CLIENTS);
    OpenStream next = open();
    await().untilAsserted(() -> assertThat(next.lines()).contains("HTTP/1.1 200 OK"));
  }

  @Test
  void aPageThatComesBackGetsTheLatestUnlessItHasItAlready() {
    publish("first");
    OpenStream page = open();
    awaitState(page, "first");
    String id =
        page.lines().stream().filter(line -> line.startsWith("id: ")).findFirst().orElseThrow();
    page.close();

    OpenStream same = OpenStream.resuming(dashboard.port(), id.substring(4));
    streams.add(same);
    await().until(() -> same.lines().contains(":"));
    assertThat(same.lines()).noneMatch(line -> line.startsWith("data: "));

    publish("second");
    awaitState(same, "second");
    OpenStream behind = OpenStream.resuming(dashboard.port(), id.substring(4));
    streams.add(behind);
    awaitState(behind, "second");
  }

  @Test
  void openPagesHoldNoThread() {
    for (int i = 0; i < 40; i++) {
      openFrom("127.0.0." + (2 + i / 8));
    }
    await().until(() -> dashboard.live().clients() == 40);
    long threads =
        Thread.getAllStackTraces().keySet().stream()
            .filter(thread -> thread.getName().startsWith("dashboard"))
            .count();
    assertThat(threads).isLessThanOrEqualTo(12);
  }

  @Test
  void aStateThatCannotBeWrittenLeavesTheOneBefore() {
    publish("good");
    awaitState(open(), "good");
    dashboard.live().publish(Object::new);
    awaitState(open(), "good");
  }

  @Test
  void close_endsEveryStreamAndIgnoresLaterStates() {
    OpenStream page = open();
    await().until(() -> dashboard.live().clients() == 1);
    dashboard.close();
    publish("too late");
    await().until(page::ended);
    assertThat(page.lines()).noneMatch(line -> line.contains("too late"));
  }

  private static void awaitState(OpenStream page, String state) {
    String line = "data: {\"state\":\"" + state + "\"}";
    await().untilAsserted(() -> assertThat(page.lines()).contains(line));
  }

  private void publish(String state) {
    dashboard.live().publish(() -> Map.of("state", state));
  }

  private void openFrom(String address) {
    streams.add(OpenStream.from(address, dashboard.port()));
  }

  private OpenStream open() {
    OpenStream stream = OpenStream.reading(dashboard.port());
    streams.add(stream);
    return stream;
  }
}
