package rindward.controller.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Tick;
import rindward.controller.room.Picture;

/** The one socket between control and pages, on time moved by hand, with every sort of listener. */
class ReportSocketTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  @TempDir private Path folder;
  private long nanos = 5_000_000_000L;
  private int looks;
  private int ticks;
  private final List<AutoCloseable> open = new ArrayList<>();

  @AfterEach
  void close() throws Exception {
    for (AutoCloseable one : open) {
      one.close();
    }
  }

  @Test
  void aPage_hearsTheLastReportWhenItComes_andEachOneAfterThat() throws Exception {
    ReportSocket control = control();
    tick(control);
    HeardControl page = page();
    List<Long> heard = new ArrayList<>();
    page.eachReport(report -> heard.add(report.snapshot().tick()));

    page.turn(); // It is at the door; nothing can be heard yet.
    control.turn();
    page.turn();
    tick(control);
    page.turn();

    assertThat(heard).containsExactly(1L, 2L);
    assertThat(page.latest().snapshot().at()).isEqualTo(START.plusSeconds(20));
    assertThat(page.silence()).isNull();
  }

  @Test
  void whatAPageHears_isOnItsOwnClock() throws Exception {
    ReportSocket control = control();
    tick(control);
    long behind = 7_000_000_000L;
    HeardControl page = new HeardControl(place(), PATIENCE, () -> nanos - behind);
    open.add(page);
    page.turn();
    control.turn();
    page.turn();

    assertThat(page.latest().told().nanos()).isEqualTo(nanos - behind);
  }

  @Test
  void aPageThatSaysLook_isHeardAtOnce_andNotMoreThanTenTimesASecond() throws Exception {
    ReportSocket control = control();
    HeardControl page = listening(control);

    page.lookAtJournal();
    page.turn();
    control.turn();
    assertThat(looks).isOne();

    for (int i = 0; i < 5; i++) {
      nanos += 10_000_000;
      page.lookAtJournal();
      page.turn();
      control.turn();
    }
    assertThat(looks).isOne();
    nanos += 60_000_000;
    control.turn();
    assertThat(looks).as("the last word is not lost").isEqualTo(2);
  }

  @Test
  void aMillionMessages_costAFewLooks_andWhoeverSaysThemIsDropped() throws Exception {
    ReportSocket control = control();
    HeardControl page = listening(control);
    ByteBuffer million = ByteBuffer.allocate(1_000_000);
    SocketChannel flood = stranger(control);
    flood.configureBlocking(false);

    for (int turn = 0; turn < 50 && control.listening() == 2; turn++) {
      int unused = flood.write(million);
      control.turn();
    }

    assertThat(control.listening()).as("the page is still there").isOne();
    assertThat(looks).isLessThanOrEqualTo(1);
    tick(control);
    page.turn();
    assertThat(page.latest().snapshot().tick()).isEqualTo(ticks);
  }

  @Test
  void whoeverReadsNothing_skipsReports_holdsNobodyUp_andIsDroppedAfterHalfAMinute()
      throws Exception {
    ReportSocket control = control();
    HeardControl page = listening(control);
    SocketChannel deaf = stranger(control);
    for (int i = 0; i < 2_000; i++) { // More than any buffer of the system holds.
      tick(control);
    }
    page.turn();
    assertThat(control.listening()).isEqualTo(2);
    assertThat(deaf.isOpen()).isTrue();

    nanos += Duration.ofSeconds(31).toNanos();
    tick(control);

    page.turn();
    assertThat(control.listening()).isOne();
    assertThat(page.latest().snapshot().tick()).isEqualTo(ticks);
  }

  @Test
  void moreThanAFewListeners_findNoPlace_andThoseWhoComeTooFastWaitAtTheDoor() throws Exception {
    ReportSocket control = control();
    List<SocketChannel> crowd = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      SocketChannel one = SocketChannel.open(StandardProtocolFamily.UNIX);
      one.configureBlocking(false);
      try {
        if (one.connect(UnixDomainSocketAddress.of(place().path()))) {
          crowd.add(one);
        }
      } catch (IOException nobodyOpens) {
        one.close();
      }
      control.tell(report());
      control.turn();
    }
    assertThat(control.listening()).isEqualTo(ReportSocket.MOST_LISTENERS);
    assertThat(crowd.size()).isLessThan(ReportSocket.MOST_ARRIVALS_A_SECOND + 20);
    for (SocketChannel one : crowd) {
      one.close();
    }

    nanos += 1_100_000_000L;
    for (int i = 0; i < 30; i++) { // Those at the door have gone, one after the other.
      control.tell(report());
      control.turn();
    }
    assertThat(control.listening()).isZero();
    assertThat(listening(control).latest()).as("and then there is place again").isNotNull();
  }

  @Test
  void withControlGone_thePageKeepsTheLastReport_andSaysHowOldItIs() throws Exception {
    ReportSocket control = control();
    HeardControl page = page();
    List<Boolean> silences = new ArrayList<>();
    page.eachSilence(() -> silences.add(page.silence() != null));
    page.turn();
    assertThat(page.silence()).contains("nothing is known of how the rooms are");

    tick(control);
    page.turn();
    control.turn();
    page.turn();
    assertThat(page.silence()).isNull();

    control.close();
    page.turn();
    nanos += Duration.ofSeconds(45).toNanos();
    page.turn();
    assertThat(page.silence()).contains("has not answered for 45 s");
    nanos += Duration.ofMinutes(20).toNanos();
    assertThat(page.silence()).contains("has not answered for 20 min");
    assertThat(page.latest().snapshot().tick()).isOne();

    ReportSocket next = control();
    tick(next);
    page.turn();
    next.turn();
    page.turn();
    assertThat(page.silence()).isNull();
    assertThat(Duration.ofNanos(nanos - page.latest().told().nanos())).isZero();
    assertThat(silences).containsExactly(false, true, false);
  }

  @Test
  void theSocketIsForItsOwnerOnly_andForTheGroupWhereTheFolderIsTheGroups() throws Exception {
    control();
    assertThat(permissions()).isEqualTo("rw-------");

    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwx---"));
    control();
    assertThat(permissions()).isEqualTo("rw-rw----");
  }

  @Test
  void aSocketThatSomebodyTakesAway_isMadeAnew() throws Exception {
    ReportSocket control = control();
    Files.delete(place().path());
    nanos += Duration.ofSeconds(11).toNanos();

    tick(control);

    assertThat(listening(control).latest()).isNotNull();
  }

  private ReportSocket control() throws IOException {
    ReportSocket control = new ReportSocket(place(), () -> looks++, () -> nanos);
    open.add(control);
    control.tell(report());
    control.turn();
    ticks = 0;
    return control;
  }

  private HeardControl page() {
    HeardControl page = new HeardControl(place(), PATIENCE, () -> nanos);
    open.add(page);
    return page;
  }

  private HeardControl listening(ReportSocket control) throws IOException {
    HeardControl page = page();
    page.turn();
    control.turn();
    tick(control);
    page.turn();
    return page;
  }

  private SocketChannel stranger(ReportSocket control) throws IOException {
    SocketChannel stranger = SocketChannel.open(place().address());
    open.add(stranger);
    control.turn();
    return stranger;
  }

  private void tick(ReportSocket control) throws IOException {
    ticks++;
    control.tell(report());
    control.turn();
  }

  private ControlReport report() {
    Instant at = START.plusSeconds(10L * ticks);
    return StoodStillControl.report(
        new ShedSnapshot(ticks, at, Duration.ofMillis(3), 0, Picture.NONE, List.of(), ""),
        new Tick(at, nanos),
        0,
        List.of(),
        List.of());
  }

  private SocketPlace place() {
    return SocketPlace.of(folder.resolve("shed.db"));
  }

  private String permissions() throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(place().path()));
  }
}
