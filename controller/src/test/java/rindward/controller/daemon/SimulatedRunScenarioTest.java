package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.desk.NowDesk;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.RoomAsked;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.rooms.NowView.RoomView;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.ShedDesk;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/** The main job from end to end: probe, picture, decision, relay, sample, account. */
class SimulatedRunScenarioTest {
  private static final Instant START = Instant.parse("2026-10-01T06:00:00Z");
  private static final Weather WEATHER = GeneratedWeather.temperate(7);

  @TempDir private Path folder;
  private Settings settings;
  private SimulatedRun rehearsal;
  private final List<Page> pages = new ArrayList<>();

  @BeforeEach
  void open() throws Exception {
    settings = settingsAt(folder);
    rehearsal = new SimulatedRun(settings, WEATHER, START);
    rehearsal
        .daemon()
        .door()
        .say(
            new Harvested("KB1", "kabocha", "Winterglut", 46, "curing", START),
            "Wren",
            "a",
            OptionalLong.empty(),
            START);
  }

  @AfterEach
  void close() {
    pages.forEach(Page::close);
    rehearsal.daemon().close();
  }

  @Test
  void curingRoom_getsIntoTheLotsRange_andMostlyStaysThere() throws Exception {
    rehearsal.load("curing", "KB1", 200);
    rehearsal.advance(Duration.ofDays(1));

    LotAccount atFirst = account();
    rehearsal.advance(Duration.ofDays(1));
    LotAccount later = account();

    assertThat(later.curing().inRange().measured() - atFirst.curing().inRange().measured())
        .isGreaterThan(Duration.ofHours(18).toMillis());
    assertThat(later.curing().elapsedMillis()).isEqualTo(Duration.ofDays(2).toMillis());
    assertThat(later.cureProgress().measured()).isGreaterThan(atFirst.cureProgress().measured());
  }

  @Test
  void lastLotCarriedOut_theRoomRestsAndSaysSo() throws Exception {
    rehearsal.load("curing", "KB1", 200);
    rehearsal.advance(Duration.ofHours(1));
    assertThat(output("curing", OutputKind.HEATER).on()).isTrue();

    Moved moved = new Moved("KB1", "storage", rehearsal.now());
    rehearsal.daemon().door().say(moved, "Wren", "b", OptionalLong.empty(), rehearsal.now());
    rehearsal.heed();
    rehearsal.advance(Duration.ofMinutes(1));

    assertThat(output("curing", OutputKind.HEATER).on()).isFalse();
    assertThat(output("curing", OutputKind.HEATER).reason().sentence())
        .isEqualTo("Nothing is kept in this room, so it rests.");
    assertThat(output("storage", OutputKind.HEATER).reason().sentence()).doesNotContain("rests");
    RoomView atRest = page().now().rooms().get(0);
    assertThat(atRest.purpose()).isEqualTo("at rest");
    assertThat(atRest.targetLowC()).isNull();
    assertThat(page().now().health()).doesNotContain("curing");
  }

  @Test
  void anotherRangeAskedFor_isKeptFromThenOn_andTheRoomCanBeLetRest() throws Exception {
    rehearsal.advance(Duration.ofHours(1));
    Range warmer = new Range(new Limits(18_000, 21_000), new Limits(50_000, 70_000));

    ask(new RoomAsked("storage", warmer, 0, false, rehearsal.now()));
    rehearsal.advance(Duration.ofHours(6));

    assertThat(page().now().rooms().get(1).temperatureC()).isBetween(18.0, 21.0);
    assertThat(page().now().rooms().get(1).targetLowC()).isEqualTo(18);

    ask(new RoomAsked("storage", null, 0, true, rehearsal.now()));
    rehearsal.advance(Duration.ofMinutes(1));

    assertThat(output("storage", OutputKind.HEATER).reason().sentence()).contains("rests");
  }

  @Test
  void inSummerNothingIsAskedAndThePageIsQuiet() throws Exception {
    rehearsal.load("curing", "KB1", 200);
    rehearsal.advance(Duration.ofHours(1));
    for (String room : List.of("curing", "storage")) {
      ask(new RoomAsked(room, null, 0, true, rehearsal.now()));
    }
    rehearsal.advance(Duration.ofMinutes(1));

    assertThat(page().now().health()).isEqualTo("Every room rests.");
    assertThat(output("curing", OutputKind.HEATER).reason().sentence())
        .as("something lies there all the same")
        .isEqualTo("This room was asked to rest, so nothing is switched on.");
  }

  private NowDesk page() {
    return page(rehearsal);
  }

  private NowDesk page(SimulatedRun run) {
    return pageOf(run).now();
  }

  private Page pageOf(SimulatedRun run) {
    Page page = new Page(run.settings(), run.daemon().view(), run.time());
    pages.add(page);
    return page;
  }

  private void ask(RoomAsked asked) {
    String request = asked.room() + "-" + rehearsal.now();
    rehearsal.daemon().door().say(asked, "Wren", request, OptionalLong.empty(), rehearsal.now());
    rehearsal.heed();
  }

  @Test
  void switchedByHand_untilItEnds_andRefusedWhereThereIsNoSuchOutput() throws Exception {
    rehearsal.advance(Duration.ofHours(1));
    Instant end = rehearsal.now().plus(Duration.ofMinutes(10));
    ShedDesk shed = pageOf(rehearsal).shed();

    shed.command(
        new ManualCommand(
            "storage", "circulation", true, end, "Wren", UUID.randomUUID().toString()));
    assertThatThrownBy(
            () ->
                shed.command(
                    new ManualCommand(
                        "storage", "cooler", true, end, "Wren", UUID.randomUUID().toString())))
        .hasMessage("The room storage has no cooler.");
    rehearsal.advance(Duration.ofMinutes(5));
    assertThat(output("storage", OutputKind.CIRCULATION).reason().sentence())
        .startsWith("Switched on by hand for another ");
    rehearsal.advance(Duration.ofMinutes(6));
    assertThat(output("storage", OutputKind.CIRCULATION).reason().sentence())
        .doesNotContain("by hand");
  }

  @Test
  void lotMovedTwice_sameSaying_movesOnce() throws Exception {
    rehearsal.advance(Duration.ofHours(2));
    Moved moved = new Moved("KB1", "storage", START.plusSeconds(3600));
    Instant now = START.plusSeconds(7200);

    rehearsal.daemon().door().say(moved, "Wren", "retry", OptionalLong.empty(), now);
    rehearsal.daemon().door().say(moved, "Wren", "retry", OptionalLong.empty(), now);

    assertThat(lot().place()).isEqualTo("storage");
    assertThat(rehearsal.daemon().door().journal())
        .filteredOn(r -> r.entry() instanceof Moved)
        .hasSize(1);
  }

  @Test
  void twoPhones_theSecondIsToldInsteadOfOverwriting() throws Exception {
    rehearsal.advance(Duration.ofHours(2));
    Instant now = START.plusSeconds(7200);
    long seen = Lots.of(rehearsal.daemon().door().journal()).find("KB1").orElseThrow().version();
    Moved first = new Moved("KB1", "storage", START.plusSeconds(3600));
    Moved second = new Moved("KB1", "porch", START.plusSeconds(3700));

    rehearsal.daemon().door().say(first, "Wren", "phone-1", OptionalLong.of(seen), now);
    var told = rehearsal.daemon().door().say(second, "Tam", "phone-2", OptionalLong.of(seen), now);

    assertThat(told.refusal())
        .hasValueSatisfying(s -> assertThat(s).contains("somebody else has changed KB1 since"));
    assertThat(lot().place()).isEqualTo("storage");
  }

  @Test
  void lotWhoseTypeLeftTheSettings_isStillThere() throws Exception {
    Settings own = settingsAt(Files.createDirectory(folder.resolve("own")));
    EntryService before =
        new EntryService(
            new Journal(new Database(own.store())),
            withHouseMarrow(Files.createDirectory(folder.resolve("marrow"))));
    before.say(
        new Harvested("HM1", "house-marrow", "", 4, "curing", START),
        "Wren",
        "b",
        OptionalLong.empty(),
        START);
    SimulatedRun later = new SimulatedRun(own, WEATHER, START);
    later.advance(Duration.ofMinutes(1));

    assertThat(page(later).now().lotCount()).isEqualTo(1);
    later.daemon().close();
  }

  @Test
  void afterARestart_theAccountIsTheSame() throws Exception {
    rehearsal.advance(Duration.ofHours(30));
    LotAccount before = account();
    rehearsal.daemon().close();
    rehearsal = new SimulatedRun(settings, WEATHER, rehearsal.now());

    assertThat(account()).isEqualTo(before);
  }

  @Test
  void databaseFromANewerVersion_theRoomsAreRunAndThePageSaysWhatIsWrong() throws Exception {
    Settings other = settingsAt(Files.createDirectory(folder.resolve("newer")));
    try (Database database = new Database(other.store())) {
      database.open();
    }
    // The schema number stands at offset 60 of the file, four bytes, big-endian (SQLite format).
    try (RandomAccessFile file = new RandomAccessFile(other.store().toFile(), "rw")) {
      file.seek(60);
      file.writeInt(999);
    }
    Time.Stepped time = new Time.Stepped(START);
    SimulatedShed shed = SimulatedBoard.open(other, GeneratedWeather.temperate(7), time);
    try (Daemon daemon = new Daemon(other, shed, time, false)) {
      for (int i = 0; i < 60; i++) {
        time.advance(Duration.ofSeconds(10));
        daemon.step();
      }
      daemon.flush();
      daemon.step();

      assertThat(shed.meter("curing-heater").hoursOn()).isGreaterThan(0);
      assertThat(daemon.latest().store()).contains("holding samples in memory (180 so far)");
      try (Page page = new Page(other, daemon.view(), time)) {
        assertThat(page.now().now().health()).contains("newer");
      }
    }
  }

  @Test
  void closing_switchesEverythingOff() throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    Daemon daemon = new Daemon(settings, shed, time, false);
    for (int i = 0; i < 60; i++) {
      time.advance(Duration.ofSeconds(10));
      daemon.step();
    }
    double before = shed.meter("curing-heater").hoursOn();

    daemon.close();
    time.advance(Duration.ofHours(1));

    assertThat(before).isGreaterThan(0);
    assertThat(shed.meter("curing-heater").hoursOn()).isEqualTo(before);
  }

  /** The guide as it was when the settings named a type more. */
  private static CropGuide withHouseMarrow(Path folder) throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml"))
            + "\n[crops.house-marrow]\nlike = \"kabocha\"\nname = \"house marrow\"\n");
    return SettingsReader.read(file, new Problems()).orElseThrow().crops();
  }

  static Settings settingsAt(Path folder) throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.copy(Path.of("examples/shed.toml"), file);
    return SettingsReader.read(file, new Problems()).orElseThrow();
  }

  private OutputDecision output(String room, OutputKind kind) {
    return rehearsal.daemon().latest().rooms().stream()
        .filter(r -> r.room().name().equals(room))
        .findFirst()
        .orElseThrow()
        .rulings()
        .get(kind);
  }

  private Lot lot() {
    return Lots.of(rehearsal.daemon().door().journal()).find("KB1").orElseThrow();
  }

  /** Adds up what the air has done to KB1, by what is on the disk. */
  private LotAccount account() {
    try (Database database = new Database(settings.store())) {
      SampleStore samples = new SampleStore(database, new SampleLog(database));
      Accuracies accuracies = Accuracies.of(rehearsal.daemon().door().journal());
      return LotAccount.of(
          Exposure.of(lot(), accuracies, samples::history, rehearsal.now()),
          settings.crops().crop("kabocha").orElseThrow(),
          settings.hold().toMillis());
    }
  }
}
