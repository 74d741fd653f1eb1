package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Alarms;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedFacts;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomPurpose;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.hardware.OutputKind;
import rindward.hardware.Relay;
import rindward.hardware.Thousandths;
import rindward.hardware.linux.HardwareWatchdog;

/** Who hears of a tick, and of which one. */
class WatchdogFeederTest {
  private static final AlarmTable TABLE = AlarmTableReader.builtIn();
  private static final AlarmId RUNAWAY =
      new AlarmId(AlarmKind.HEATER_RUNAWAY, "store", "store-heater");

  @TempDir private Path folder;
  private final List<Boolean> beats = new ArrayList<>();
  private Path device;
  private final SupervisedTask telling =
      new TaskSupervisor(() -> Instant.EPOCH, () -> 0).task("watchdog", Cadence.whenAsked());
  private WatchdogFeeder feeder;

  private final Relay line =
      new Relay() {
        @Override
        public String name() {
          return "heartbeat";
        }

        @Override
        public void set(boolean on) {
          beats.add(on);
        }
      };

  @BeforeEach
  void arm() throws IOException {
    device = Files.createFile(folder.resolve("watchdog"));
    Path facts = Files.createDirectories(folder.resolve("sys/class/watchdog/watchdog0"));
    Files.writeString(facts.resolve("timeout"), "15\n");
    HardwareWatchdog watchdog =
        HardwareWatchdog.arm(device, folder.resolve("sys"), Duration.ofSeconds(10));
    feeder =
        new WatchdogFeeder(HostMachine.none().service(), watchdog, line, Runnable::run, telling);
  }

  @Test
  void aCompleteTick_togglesTheHeartbeatAndFeedsTheWatchdog() throws IOException {
    feeder.afterTick(after(1, true, null));
    feeder.afterTick(after(2, true, null));
    feeder.afterTick(after(3, false, null));

    assertThat(beats).containsExactly(true, false, true);
    assertThat(Files.size(device)).isEqualTo(3);
  }

  @Test
  void aWatchdogThatCannotBeFed_isCountedAsAFailure_andFedAgainAtTheNextTick() {
    AtomicBoolean isBroken = new AtomicBoolean(true);
    TaskSupervisor tasks =
        new TaskSupervisor(
            () -> Instant.EPOCH,
            () -> 0,
            (task, work) ->
                () -> {
                  if (isBroken.get()) {
                    throw new StackOverflowError("a test says so");
                  }
                  work.run();
                });
    SupervisedTask feeding = tasks.task("watchdog", Cadence.whenAsked());
    WatchdogFeeder broken =
        new WatchdogFeeder(HostMachine.none().service(), null, line, Runnable::run, feeding);
    broken.afterTick(after(1, true, null));
    assertThat(feeding.health().failuresInARow()).isOne();

    isBroken.set(false);
    broken.afterTick(after(2, true, null));
    assertThat(feeding.health().failuresInARow()).isZero();
    assertThat(beats).hasSize(2);
  }

  @Test
  void aTickThatFailed_isHeardByNobody() throws IOException {
    feeder.afterTick(null);
    feeder.afterTick(after(1, true, null));
    feeder.afterTick(after(1, true, null));

    assertThat(beats).hasSize(1);
    assertThat(Files.size(device)).isEqualTo(1);
  }

  @Test
  void heaterThatShouldBeOffAndCannotBeReached_stopsTheHeartbeatOnly() throws IOException {
    feeder.afterTick(after(1, false, "its board does not answer"));
    assertThat(beats).isEmpty();
    assertThat(Files.size(device)).isEqualTo(1);

    feeder.afterTick(after(2, true, "its board does not answer"));
    assertThat(beats).hasSize(1);
  }

  @Test
  void heaterThatIsSeenToGoOn_stopsTheHeartbeat_untilAPersonResetsTheAlarm() {
    Alarms runaway = Alarms.NONE.after(facts(true), TABLE, 0);
    feeder.afterTick(after(1, false, null).judged(judged(runaway)));
    assertThat(beats).isEmpty();

    Alarms gone = runaway.after(facts(false), TABLE, 10).after(facts(false), TABLE, 1000);
    feeder.afterTick(after(2, false, null).judged(judged(gone)));
    assertThat(beats).isEmpty();

    Alarms seen = gone.acknowledge(RUNAWAY);
    feeder.afterTick(after(3, false, null).judged(judged(seen)));
    assertThat(beats).isEmpty();

    feeder.afterTick(after(4, false, null).judged(judged(seen.reset(RUNAWAY))));
    assertThat(beats).hasSize(1);
  }

  @Test
  void heaterThatIsSeenToGoOn_withItsAlarmOutOfService_doesNotStopTheHeartbeat() {
    Alarms runaway = Alarms.NONE.after(facts(true), TABLE, 0);

    feeder.afterTick(after(1, false, null).judged(judged(runaway.outOfService(RUNAWAY, true))));

    assertThat(beats).hasSize(1);
  }

  @Test
  void cleanStop_disarms_andADeadControlDoesNot() throws IOException {
    feeder.close(false);
    assertThat(Files.readString(device)).isEmpty();

    feeder.close(true);
    assertThat(Files.readString(device)).isEqualTo("V");
  }

  @Test
  void status_isOneLineThatAPersonReads() {
    assertThat(WatchdogFeeder.status(after(1, true, null))).isEqualTo("store without a reading");
  }

  private static Judgement judged(Alarms alarms) {
    return new Judgement(alarms, new ShedFacts(List.of(), Set.of()), Instant.EPOCH, 0);
  }

  /** A room of which nothing is known, and whether its heater was seen to go on. */
  private static ShedFacts facts(boolean isRunaway) {
    RoomFacts room =
        new RoomFacts(
            "store",
            Set.of(OutputKind.HEATER),
            new Range(new Limits(10_000, 13_000), new Limits(50_000, 70_000)),
            Thousandths.NONE,
            Thousandths.NONE,
            Thousandths.NONE,
            Thousandths.NONE,
            Thousandths.NONE,
            Thousandths.NONE,
            Thousandths.NONE,
            35_000,
            RoomFacts.NOT_FORECAST,
            false,
            isRunaway ? Set.of(new Finding(AlarmKind.HEATER_RUNAWAY, RUNAWAY.thing())) : Set.of(),
            Set.of());
    return new ShedFacts(List.of(room), Set.of());
  }

  private static ShedSnapshot after(long tick, boolean isHeating, @Nullable String failure) {
    Room room =
        new Room(
            "store",
            RoomPurpose.STORAGE,
            new Range(new Limits(10_000, 13_000), new Limits(50_000, 70_000)),
            Map.of(),
            Accuracy.EXACT,
            0,
            0,
            false);
    OutputDecision ruling =
        new OutputDecision(isHeating, Precedence.ECONOMY, new Reason(ReasonCode.NO_WISH, 0, 0));
    RoomState state =
        new RoomState(
            room,
            RoomDemand.of(room),
            Picture.NONE,
            Map.of(OutputKind.HEATER, ruling),
            failure == null ? Map.of() : Map.of(OutputKind.HEATER, failure));
    return new ShedSnapshot(
        tick, Instant.EPOCH, Duration.ZERO, 0, Picture.NONE, List.of(state), "");
  }
}
