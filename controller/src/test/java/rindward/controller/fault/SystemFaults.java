package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.STORAGE;
import static rindward.controller.fault.TrialShed.said;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import rindward.controller.control.Controller;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.Harvested;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.StartingPoint;
import rindward.controller.settings.StartingPoint.Basis;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.SimulatedShed;

/** The program itself, its disk, its clock and its settings. */
final class SystemFaults {
  private SystemFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("power comes back again and again", SystemFaults::reboots),
        new Fault("power cut in the middle of a write", SystemFaults::powerCut),
        new Fault("disk cannot be written", SystemFaults::diskFull),
        new Fault("database corrupt at start", SystemFaults::corrupt),
        new Fault("clock at 1970, then set right", SystemFaults::clockIn1970),
        new Fault("clock stepped back an hour", SystemFaults::clockBack),
        new Fault("settings broken while running", SystemFaults::settingsBroken),
        new Fault("out of memory", SystemFaults::outOfMemory),
        new Fault("two daemons at once", SystemFaults::twoDaemons));
  }

  private static FaultRow reboots(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.started(folder)) {
      trial.tick();
      assertThat(trial.isAllOff(STORAGE)).isTrue();
      trial.breaks(ShedFault.Kind.DOOR_OPEN, STORAGE, 0.5);
      Duration heats =
          trial.until(() -> trial.isCommanded(STORAGE, OutputKind.HEATER), Duration.ofHours(1));
      assertThat(heats).isGreaterThanOrEqualTo(Duration.ofSeconds(110));
      return new FaultRow(
          "brown-out: the board starts over and over",
          "each start begins with every output off for its minimum off time (2 min here; only below"
              + " 2 C sooner), so a heater is switched at most once a start",
          "at once",
          "nothing by itself; gaps in the room's history",
          "runs on after the last start");
    }
  }

  private static FaultRow powerCut(Path folder) throws Exception {
    Path cut = Files.createDirectory(folder.resolve("cut"));
    long noted;
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial
          .daemon
          .door()
          .say(
              new Harvested("KB1", "kabocha", "Winterglut", 40, STORAGE, TrialShed.START),
              "Wren",
              "a",
              OptionalLong.empty(),
              trial.time.now().at());
      trial.daemon.flush();
      noted = trial.time.now().at().toEpochMilli();
      trial.live(Duration.ofSeconds(50));
      trial.daemon.flush();
      for (String end : List.of("", "-wal")) {
        Files.copy(folder.resolve("rindward.db" + end), cut.resolve("rindward.db" + end));
      }
    }
    try (RandomAccessFile log =
        new RandomAccessFile(cut.resolve("rindward.db-wal").toFile(), "rw")) {
      log.setLength(log.length() - 100);
    }
    try (TrialShed after = TrialShed.started(cut)) {
      after.tick();
      assertThat(after.daemon.latest().store()).isEmpty();
      assertThat(after.daemon.door().journal())
          .anyMatch(r -> r.entry() instanceof Harvested h && h.lot().equals("KB1"));
    }
    try (Database database = new Database(cut.resolve("rindward.db"))) {
      long kept = new SampleStore(database, new SampleLog(database)).newestMillis().orElseThrow();
      assertThat(noted - kept).isLessThanOrEqualTo(10_000);
    }
    return new FaultRow(
        "power cut in the middle of a write",
        "starts with everything off; the half-written piece is dropped",
        "loses at most what came since the write before, 45 s of samples, and nothing a person"
            + " said",
        "the gap shows as unknown",
        "goes on by itself");
  }

  /** A folder stands where the file should be, since a test cannot fill a disk. */
  private static FaultRow diskFull(Path folder) throws Exception {
    Files.createDirectory(folder.resolve("rindward.db"));
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.daemon.flush();
      trial.tick();
      assertThat(trial.daemon.latest().store()).contains("holding samples in memory");
      trial.untilHeating();
      Files.delete(folder.resolve("rindward.db"));
      trial.daemon.flush();
      trial.tick();
      assertThat(trial.daemon.latest().store()).isEmpty();
      return new FaultRow(
          "disk full, card read-only or database missing",
          "the rooms are run as before; samples wait in memory, three days of two rooms, then the"
              + " oldest are given up",
          "at the next flush, 45 s",
          "the page: \"The store is holding samples in memory (... so far)\" and why",
          "what waited is written");
    }
  }

  private static FaultRow corrupt(Path folder) throws Exception {
    Files.writeString(folder.resolve("rindward.db"), "no database but a shopping list".repeat(99));
    try (TrialShed trial = TrialShed.settled(folder)) {
      trial.daemon.flush();
      trial.tick();
      assertThat(trial.daemon.latest().store()).contains("is damaged and was set aside");
      trial.untilHeating();
      try (Stream<Path> files = Files.list(folder)) {
        Path aside = files.filter(f -> f.toString().contains(".db.damaged-")).findFirst().get();
        assertThat(Files.readString(aside)).startsWith("no database");
      }
      return new FaultRow(
          "database corrupt at start",
          "sets the file aside, whole, and goes on with a new one: runs the rooms by the settings"
              + " and by what lasts beside them: what was tried, compared, asked for and switched"
              + " off by hand",
          "at the start",
          "the page: \"The store is new, for the one before ... is damaged and was set aside\", and"
              + " which copy there is to go on from",
          "`restore` goes on from the newest whole copy");
    }
  }

  private static FaultRow clockIn1970(Path folder) throws Exception {
    try (DoubtfulClock shed = new DoubtfulClock(folder, Instant.EPOCH)) {
      shed.live(Duration.ofMinutes(30));
      assertThat(shed.isHeating()).isTrue();
      assertThat(shed.kept()).isZero();
      shed.isAt(DoubtfulClock.NOW);
      shed.live(Duration.ofMinutes(10));
      assertThat(shed.kept()).isBetween(38L, 40L);
      return new FaultRow(
          "clock at 1970 after a power cut, later set by the network",
          "the rooms are run as ever, by a clock that cannot jump; samples wait in memory for their"
              + " date and get it when the clock is set. If it never is, that time stays unknown",
          "dated within 5 s of trust",
          "the page: \"the clock cannot be believed yet\"",
          "all " + shed.kept() + " min were dated");
    }
  }

  private static FaultRow clockBack(Path folder) throws Exception {
    try (DoubtfulClock shed = new DoubtfulClock(folder, DoubtfulClock.NOW)) {
      shed.live(Duration.ofHours(2));
      long before = shed.kept();
      shed.isAt(DoubtfulClock.NOW.plus(Duration.ofHours(1)));
      shed.live(Duration.ofMinutes(59));
      assertThat(shed.kept()).isBetween(before, before + 1);
      assertThat(shed.isHeating()).isTrue();
      shed.live(Duration.ofMinutes(31));
      assertThat(shed.kept()).isBetween(before + 28, before + 31);
      return new FaultRow(
          "clock stepped back an hour",
          "the rooms are run as ever; nothing is kept of the hour that comes twice, so no lot is"
              + " credited twice. A command by hand may end at once",
          "at once",
          "the page: \"the clock cannot be believed yet\"",
          "keeps again when the clock has passed the newest sample");
    }
  }

  private static FaultRow settingsBroken(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.settled(folder)) {
      Path file = folder.resolve("shed.toml");
      String good = Files.readString(Path.of("examples/shed.toml"));
      new Accepted(good, TrialShed.START, "Wren").keep(file);
      Files.writeString(file, good.replaceFirst("purpose = \"[a-z]*\"", "purpose = \"party\""));
      trial.untilHeating();
      Problems problems = new Problems();
      assertThat(StartingPoint.of(file, problems))
          .hasValueSatisfying(start -> assertThat(start.basis()).isEqualTo(Basis.ACCEPTED));
      assertThat(problems.list()).isNotEmpty();
      Files.writeString(file, "[outputs.storage-heater]\n");
      assertThat(StartingPoint.of(file, new Problems()))
          .hasValueSatisfying(start -> assertThat(start.basis()).isEqualTo(Basis.ONLY_OBSERVED));
      return new FaultRow(
          "settings changed to a broken file while running",
          "goes on with what it read at its start. The next start goes by what was last accepted:"
              + " it runs the rooms if the file still says the same of outputs, probes, watchdog"
              + " and heartbeat, to the letter; otherwise everything is off and the rooms are only"
              + " observed. `off` goes by both. Where nothing was ever accepted, no output is"
              + " opened",
          "at the next start",
          "`check`, and the start: every problem with line and key. Alarms: The settings are"
              + " broken; the last accepted ones count, or (this one wakes) Everything is off: the"
              + " settings are broken, with the line",
          "mend the file and start again");
    }
  }

  /** Played on the daemon's own threads; each decision takes the time on, however slow they are. */
  private static FaultRow outOfMemory(Path folder) throws Exception {
    Settings settings =
        TrialShed.settings(folder, example -> example.replace("port = 8420", "port = 0"));
    AtomicLong nanos = new AtomicLong();
    Time time = () -> new Tick(TrialShed.START.plusNanos(nanos.get()), nanos.get());
    long step = settings.tick().toNanos() / settings.rooms().size();
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    RuleBasedController control = new RuleBasedController();
    Controller outOfMemory =
        (memory, room, order, picture, outdoors, now) -> {
          boolean isOver = nanos.addAndGet(step) > Duration.ofHours(6).toNanos();
          if (memory.switched(OutputKind.HEATER).on() || isOver) {
            throw new OutOfMemoryError("a test says so");
          }
          return control.decide(memory, room, order, picture, outdoors, now);
        };
    try (Daemon daemon = new Daemon(settings, shed, time, false, HostMachine.none(), outOfMemory)) {
      daemon.start(1000);
      assertThat(daemon.awaitEnd()).isFalse();
      assertThat(shed.meter("curing-heater").hoursOn()).isPositive();
      int switched = shed.meter("curing-heater").switchings();
      assertThat(switched).as("on and off again").isEqualTo(2);
    }
    return new FaultRow(
        "out of memory in the control",
        "switches everything off and ends; the service starts it anew, with everything off",
        "in the same tick",
        "the service's log",
        "runs on after the start; after 5 deaths in 10 min it stays off");
  }

  private static FaultRow twoDaemons(Path folder) throws IOException {
    Path store = folder.resolve("rindward.db");
    try (BoardLock first = BoardLock.take(store).orElseThrow()) {
      assertThat(first).isNotNull();
      assertThat(BoardLock.take(store)).isEmpty();
    }
    try (BoardLock next = BoardLock.take(store).orElseThrow()) {
      assertThat(next).isNotNull();
    }
    return new FaultRow(
        "two daemons on one shed",
        "the second does not start and switches nothing",
        said(Duration.ZERO),
        "\"Another rindward has its hands on this shed; stop it first.\"",
        "the lock goes with the process that held it, however that ends");
  }
}
