package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.CropGuide;
import rindward.controller.judge.LotJudge;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EventLog;
import rindward.controller.store.Journal;
import rindward.controller.store.StoredSwitching;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.rooms.ClimateView;
import rindward.dashboard.rooms.SwitchingView;
import rindward.hardware.Thousandths;

/** A room's past as its page shows it, from a database as the daemon writes it. */
class RoomHistoryTest {
  private static final Instant START = Instant.parse("2026-09-20T00:00:00Z");
  private static final long STEP = 10_000;
  private static final Duration SEASON = Duration.ofDays(174);

  @TempDir private Path folder;
  private Database database;
  private SampleLog log;
  private RoomHistory history;

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("shed.sqlite"));
    log = new SampleLog(database);
    history =
        new RoomHistory(
            List.of(CuringRoom.withAHeater()),
            room -> Optional.of(room.range()),
            ZoneId.of("Europe/London"),
            300_000,
            new SampleStore(database, log)::history,
            new SwitchingLog(database),
            noMarks(),
            () -> START.plus(SEASON));
  }

  private RoomMarks noMarks() {
    CropGuide crops = CropGuideReader.builtIn();
    EntryService door = new EntryService(new Journal(database), crops);
    LotPages lots =
        new LotPages(
            List.of(),
            ZoneId.of("Europe/London"),
            crops,
            300_000,
            door,
            new LotJudge(crops, 300_000, new SampleStore(database, log)::history, door::journal),
            new SampleStore(database, log)::history,
            Runnable::run,
            () -> START);
    return new RoomMarks(
        AlarmTableReader.builtIn(), new AlarmLog(new EventLog(database)), crops, lots);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void climate_ofASeason_isExactAtItsExtremesAndThereInTime() {
    long samples = SEASON.toMillis() / STEP;
    long coldest = START.toEpochMilli() + 123_456 * STEP;
    for (long i = 0; i < samples; i++) {
      long at = START.toEpochMilli() + i * STEP;
      log.sample("curing", at, at == coldest ? 3_210 : 26_000 + (int) (i % 300) * 10, 80_000);
      if (i % 8_640 == 8_639) {
        log.flush(at);
      }
    }
    log.flush(START.plus(SEASON).toEpochMilli());
    ask(); // The first answer also loads the classes that give it.

    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long begin = threads.getCurrentThreadCpuTime(); // Other programs do not lengthen it.
    ClimateView view = ask();
    long tookMillis = Duration.ofNanos(threads.getCurrentThreadCpuTime() - begin).toMillis();

    List<Double> values = view.temperature().values();
    int lowest = values.indexOf(3.21);
    assertThat(values).hasSizeBetween(800, 1_602);
    assertThat(lowest).isPositive();
    assertThat(START.toEpochMilli() + Math.round(view.temperature().seconds().get(lowest) * 1000))
        .isEqualTo(coldest);
    assertThat(values).contains(28.99);
    assertThat(tookMillis).isLessThan(300);
  }

  @Test
  void climate_showsTheBandAndNothingOutdoorsWhereNoProbeHangs() {
    sample(0, 27_000);
    log.flush(0);
    ClimateView view = history.climate("curing", START, START.plusSeconds(60), 60, true);
    assertThat(view.temperatureBand()).isEqualTo(new ClimateView.BandView(26, 29));
    assertThat(view.temperature().values()).containsExactly(27.0);
    assertThat(view.dewPoint().values()).hasSize(1);
    assertThat(view.outdoorTemperature().values()).isEmpty();
    assertThat(view.zone()).isEqualTo("Europe/London");
  }

  @Test
  void climate_showsOutdoorAirWhereItIsKept() {
    sample(0, 27_000);
    log.sample(SampleLog.OUTDOORS, START.toEpochMilli(), 8_250, 91_000);
    log.flush(0);
    ClimateView view = history.climate("curing", START, START.plusSeconds(60), 60, true);
    assertThat(view.outdoorTemperature().values()).containsExactly(8.25);
    assertThat(history.knows(SampleLog.OUTDOORS)).isFalse();
    ClimateView alone = history.climate("curing", START, START.plusSeconds(60), 60, false);
    assertThat(alone.outdoorTemperature().values()).isEmpty();
    assertThat(alone.temperature()).isEqualTo(view.temperature());
  }

  @Test
  void switching_showsTheShareOfEachSlotAndTheReasons() {
    for (int second = 0; second < 600; second += 10) {
      sample(second, 27_000);
    }
    switching(60, true, "25.9 C is below 26 C");
    switching(180, false, "warm enough");
    log.flush(0);
    SwitchingView view = history.switching("curing", START, START.plusSeconds(600), 5);
    assertThat(view.outputs())
        .singleElement()
        .satisfies(
            strip -> {
              assertThat(strip.name()).isEqualTo("warmer");
              assertThat(strip.kind()).isEqualTo("heater");
              assertThat(strip.onShare()).containsExactly(0.5, 0.5, 0.0, 0.0, 0.0);
            });
    assertThat(view.changes())
        .containsExactly(
            new SwitchingView.ChangeView(START.plusSeconds(180), "warmer", false, "warm enough"),
            new SwitchingView.ChangeView(
                START.plusSeconds(60), "warmer", true, "25.9 C is below 26 C"));
  }

  @Test
  void switching_whatWasOnBeforeCountsUntilTheRecordBreaksOff() {
    for (int second = 0; second < 900; second += 10) {
      sample(second, 27_000);
    }
    sample(4_000, 27_000);
    switching(10, true, "cold");
    log.flush(0);
    Instant from = START.plusSeconds(600);
    List<Double> shares =
        history.switching("curing", from, from.plusSeconds(3_600), 6).outputs().get(0).onShare();
    // The last sample at 890 s holds until 1190 s; the next comes at 4000 s, and nothing says on.
    assertThat(shares).containsExactly(1.0, null, null, null, null, 0.0);
  }

  @Test
  void samples_areHandedOverAsTheyWereMeasured() {
    sample(0, 27_410);
    log.sample("curing", START.toEpochMilli() + 10_000, Thousandths.NONE, 80_000);
    sample(20, 27_430);
    log.flush(0);
    List<String> lines = new ArrayList<>();
    history.samples(
        "curing",
        START,
        START.plusSeconds(20),
        (at, c, percent) -> lines.add(at - START.toEpochMilli() + " " + c + " " + percent));
    assertThat(lines).containsExactly("0 27.41 80.0", "10000 NaN 80.0");
  }

  private ClimateView ask() {
    return history.climate("curing", START, START.plus(SEASON), 800, false);
  }

  private void sample(int second, int temperatureMilliC) {
    log.sample("curing", START.toEpochMilli() + 1000L * second, temperatureMilliC, 80_000);
  }

  private void switching(int second, boolean isOn, String reason) {
    log.switching(
        new StoredSwitching(
            START.toEpochMilli() + 1000L * second, "curing", "warmer", isOn, reason));
  }
}
