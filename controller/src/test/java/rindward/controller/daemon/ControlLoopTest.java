package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.daemon.ControlLoop.Watched;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.room.RoomPurpose;
import rindward.controller.store.Database;
import rindward.controller.store.StoreException;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.Cadence;
import rindward.controller.task.TaskSupervisor;
import rindward.hardware.OutputKind;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Relay;

/** What the loop does when one of its parts fails. Two rooms; time moved by hand. */
class ControlLoopTest {
  private static final Instant START = Instant.parse("2026-10-01T06:00:00Z");
  private static final Duration TICK = Duration.ofSeconds(10);

  @TempDir private Path folder;
  private final Time.Stepped time = new Time.Stepped(START);
  private final ScriptedProbe north = new ScriptedProbe("north-air");
  private final ScriptedProbe south = new ScriptedProbe("south-air");
  private final RecordingRelay heater = new RecordingRelay("north-heater");
  private final TaskSupervisor tasks =
      new TaskSupervisor(() -> time.now().at(), () -> time.now().nanos());
  private SampleLog log;
  private Database database;
  private ControlLoop loop;

  @BeforeEach
  void build() {
    open(folder.resolve("shed.db"));
  }

  private void open(Path file) {
    database = new Database(file);
    log = new SampleLog(database);
    loop =
        new ControlLoop(
            time,
            new RuleBasedController(),
            List.of(
                new Watched(room("north"), List.of("north-air")),
                new Watched(room("south"), List.of("south-air"))),
            List.of(),
            DemandSource.AS_SET,
            new ProbeReads(
                time, Map.of(), Map.of("bus", List.of(north, south)), bus -> Runnable::run, tasks),
            new RelayDriver(Map.of("north-heater", heater)),
            log,
            TickEvaluator.NOBODY,
            tasks.task("alarms", Cadence.whenAsked()),
            new KeptMemories(folder.resolve("estimate"), Map.of()));
    time.advance(Duration.ofMinutes(10));
  }

  @Test
  void tick_oneProbeFails_costsOnlyItsOwnRoom() throws Exception {
    north.reading = Reading.of(8, 60);
    south.failure = "its line is open";

    ShedSnapshot snapshot = tick();

    assertThat(state(snapshot, "north").picture().temperatureMilliC()).isEqualTo(8_000);
    assertThat(heater.isOn).isTrue();
    assertThat(state(snapshot, "south").picture().troubles())
        .containsExactly("Probe south-air has given no value yet: its line is open");
  }

  @Test
  void tick_probeGoesSilentWhileHeating_switchesOffWithinThirtySeconds() throws Exception {
    north.reading = Reading.of(8, 60);
    tick();
    north.failure = "no answer";

    for (int i = 0; i < 3; i++) {
      tick();
    }

    assertThat(heater.isOn).isFalse();
  }

  @Test
  void tick_probeLeaps_isBelievedOnlyWhenItSaysSoAgain() throws Exception {
    north.reading = Reading.of(13, 60);
    tick();

    north.reading = Reading.of(24, 60);
    assertThat(state(tick(), "north").picture().temperatureMilliC()).isEqualTo(13_000);
    north.reading = Reading.of(13.1, 60);
    assertThat(state(tick(), "north").picture().temperatureMilliC()).isEqualTo(13_100);
    north.reading = Reading.of(24, 60);
    tick();
    assertThat(state(tick(), "north").picture().temperatureMilliC()).isEqualTo(24_000);
  }

  @Test
  void tick_probeThatPublishesByItself_isAsOldAsItsValue() throws Exception {
    north.reading = Reading.of(8, 60);
    north.age = Duration.ofSeconds(15);
    tick();
    assertThat(heater.isOn).isTrue();

    north.age = Duration.ofSeconds(25);
    ShedSnapshot snapshot = tick();

    assertThat(heater.isOn).isFalse();
    assertThat(state(snapshot, "north").picture().troubles())
        .containsExactly("Probe north-air last answered 25 s ago.");
  }

  @Test
  void tick_relayCannotBeSwitched_isToldAndTheOtherRoomGoesOn() throws Exception {
    north.reading = Reading.of(8, 60);
    south.reading = Reading.of(13, 60);
    heater.failure = "the board does not answer";

    ShedSnapshot snapshot = tick();

    assertThat(state(snapshot, "north").failures())
        .containsEntry(OutputKind.HEATER, "the board does not answer");
    assertThat(state(snapshot, "south").picture().hasTemperature()).isTrue();
  }

  @Test
  void tick_probeDriverBreaksDown_isTreatedLikeASilentProbe() throws Exception {
    north.reading = Reading.of(8, 60);
    tick();
    north.breakdown = new IllegalStateException("driver is confused");

    ShedSnapshot snapshot = tick();

    assertThat(snapshot.tick()).isEqualTo(2);
    assertThat(state(snapshot, "north").picture().temperatureMilliC()).isEqualTo(8_000);
  }

  @Test
  void tick_databaseCannotBeUsed_goesOnAndSaysSo() throws Exception {
    open(Files.createDirectory(folder.resolve("in-the-way.db")));
    north.reading = Reading.of(8, 60);
    tick();
    assertThatThrownBy(() -> log.flush(time.now().at().toEpochMilli()))
        .isInstanceOf(StoreException.class);

    ShedSnapshot snapshot = tick();

    assertThat(heater.isOn).isTrue();
    assertThat(snapshot.store()).startsWith("The store is holding samples in memory (2 so far)");
  }

  @Test
  void tick_everyChangeOfAnOutput_isNotedWithItsReason() throws Exception {
    north.reading = Reading.of(8, 60);
    tick();
    tick();
    log.flush(time.now().at().toEpochMilli());

    assertThat(new SwitchingLog(database).newest("north", 0, Long.MAX_VALUE, 100))
        .singleElement()
        .satisfies(
            switching -> {
              assertThat(switching.output()).isEqualTo("north-heater");
              assertThat(switching.isOn()).isTrue();
              assertThat(switching.reason())
                  .isEqualTo("Heating: it is 8 C and should not fall below 12.3 C.");
            });
  }

  @Test
  void tick_readingLost_isNotedAsUnknown_notAsTheLastValue() throws Exception {
    north.reading = Reading.of(13, 60);
    tick();
    north.failure = "no answer";
    for (int i = 0; i < 4; i++) {
      tick();
    }
    long[] known = {0};
    new SampleStore(database, log)
        .history("north")
        .forEach(
            0,
            Long.MAX_VALUE / 2,
            run -> {
              for (int i = 0; i < run.count(); i++) {
                known[0] += run.temperatureMilliC()[i] == 13_000 ? 1 : 0;
              }
            });

    assertThat(known[0]).isEqualTo(3);
  }

  private ShedSnapshot tick() throws InterruptedException {
    time.advance(TICK);
    loop.tick();
    return loop.latest();
  }

  private static RoomState state(ShedSnapshot snapshot, String room) {
    return snapshot.rooms().stream()
        .filter(r -> r.room().name().equals(room))
        .findFirst()
        .orElseThrow();
  }

  private static Room room(String name) {
    Map<OutputKind, Output> outputs = new HashMap<>();
    if (name.equals("north")) {
      outputs.put(
          OutputKind.HEATER,
          new Output(
              "north-heater",
              OutputKind.HEATER,
              Contact.RELAY,
              Duration.ZERO,
              Duration.ZERO,
              0,
              0));
    }
    return new Room(
        name,
        RoomPurpose.STORAGE,
        new Range(new Limits(12_000, 15_000), new Limits(50_000, 70_000)),
        outputs,
        Accuracy.EXACT,
        0,
        0,
        false);
  }

  /** Says what it is told to say. */
  private static final class ScriptedProbe implements Probe {
    private final String name;
    private Reading reading = Reading.of(13, 60);
    private String failure;
    private RuntimeException breakdown;
    private Duration age = Duration.ZERO;

    ScriptedProbe(String name) {
      this.name = name;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public Reading read() throws IOException {
      if (breakdown != null) {
        throw breakdown;
      }
      if (failure != null) {
        throw new IOException(failure);
      }
      return reading;
    }

    @Override
    public Duration age() {
      return age;
    }
  }

  /** Remembers what it was told. */
  private static final class RecordingRelay implements Relay {
    private final String name;
    private boolean isOn;
    private String failure;

    RecordingRelay(String name) {
      this.name = name;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public void set(boolean on) throws IOException {
      if (failure != null) {
        throw new IOException(failure);
      }
      isOn = on;
    }
  }
}
