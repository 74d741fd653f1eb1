package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Tick;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.HandCommands;
import rindward.controller.room.Output;
import rindward.controller.room.ProbeReading;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.EntryService;
import rindward.controller.task.TaskState;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.ShedDesk;
import rindward.dashboard.shed.ShedView;
import rindward.dashboard.shed.ShedView.HealthView;
import rindward.dashboard.shed.ShedView.ManualView;
import rindward.dashboard.shed.ShedView.OutputView;
import rindward.dashboard.shed.ShedView.ProbeView;
import rindward.dashboard.shed.SwitchingRefused;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/** The shed page: every probe and output, and how the program itself is doing. */
public final class ShedParts implements ShedDesk {
  private static final Duration LATE = Duration.ofMinutes(2);

  private final String version;
  private final List<ProbeSetting> probes;
  private final ControlView control;
  private final Supplier<List<TaskState>> ownTasks;
  private final HandSwitching hands;
  private final Supplier<Tick> time;

  /**
   * @param control tells of the parts, and looks at what is switched by hand
   * @param ownTasks how everything is doing that runs by itself here and not in control
   * @param door where what is switched by hand is said
   */
  public ShedParts(
      String version,
      List<ProbeSetting> probes,
      ControlView control,
      Supplier<List<TaskState>> ownTasks,
      EntryService door,
      Supplier<Tick> time) {
    this.version = version;
    this.probes = List.copyOf(probes);
    this.control = control;
    this.ownTasks = ownTasks;
    this.hands = new HandSwitching(control, door);
    this.time = time;
  }

  @Override
  public ShedView shed() {
    ControlReport report = control.latest();
    Tick now = time.get();
    List<OutputView> outputs = new ArrayList<>();
    if (report != null) {
      HandCommands inForce = hands.inForce(report, now.at());
      report.snapshot().rooms().forEach(state -> addOutputs(state, inForce, now.at(), outputs));
    }
    return new ShedView(
        report == null ? now.at() : report.snapshot().at(),
        probes.stream().map(probe -> probe(probe, report, now)).toList(),
        outputs,
        health(report, now),
        SwitchedByHand.LONGEST.toMinutes());
  }

  @Override
  public void command(ManualCommand command) throws SwitchingRefused {
    hands.command(command, now());
  }

  @Override
  public void release(String room, String kind, String by) throws SwitchingRefused {
    hands.release(room, kind, by, now());
  }

  @Override
  public Instant now() {
    return time.get().at();
  }

  private static ProbeView probe(ProbeSetting setting, @Nullable ControlReport report, Tick now) {
    ProbeReading known =
        report == null
            ? new ProbeReading(setting.name(), setting.place(), null, 0, null)
            : report.reading(setting.name());
    Reading reading = known.reading();
    long ageNanos = now.nanos() - known.takenNanos();
    return new ProbeView(
        setting.name(),
        setting.room().isEmpty() ? null : setting.room(),
        setting.place().name().toLowerCase(Locale.ROOT),
        reading == null ? null : (Double) Thousandths.toDouble(reading.temperatureMilliC()),
        reading == null || !reading.hasHumidity()
            ? null
            : (Double) Thousandths.toDouble(reading.humidityMilliPct()),
        reading == null ? null : (Long) Duration.ofNanos(ageNanos).toSeconds(),
        problem(known, reading, now.nanos()));
  }

  private static @Nullable String problem(
      ProbeReading known, @Nullable Reading reading, long nowNanos) {
    String failure = known.failure() == null ? "" : " It said: " + known.failure();
    if (reading == null) {
      return "It has given no value yet; check its cable and its name in the settings." + failure;
    }
    return known.isSilent(nowNanos)
        ? "It does not answer any more, and is not used; check its cable." + failure
        : null;
  }

  private static void addOutputs(
      RoomState state, HandCommands hands, Instant now, List<OutputView> outputs) {
    for (Output output : state.room().outputs().values()) {
      OutputDecision ruling = state.rulings().get(output.kind());
      String failure = state.failures().get(output.kind());
      outputs.add(
          new OutputView(
              state.room().name(),
              output.name(),
              output.kind().word(),
              ruling != null && ruling.on(),
              ruling == null ? "nothing has been decided yet" : ruling.reason().sentence(),
              manual(hands.of(state.room().name(), now), output),
              failure == null ? null : "It cannot be switched: " + failure));
    }
  }

  private static @Nullable ManualView manual(
      List<rindward.controller.room.ManualCommand> commands, Output output) {
    return commands.stream()
        .filter(command -> command.kind() == output.kind())
        .findFirst()
        .map(command -> new ManualView(command.on(), command.until(), command.by()))
        .orElse(null);
  }

  private List<HealthView> health(@Nullable ControlReport report, Tick now) {
    List<HealthView> health = new ArrayList<>();
    String silence = control.silence();
    if (silence != null) {
      health.add(new HealthView("Control", silence, true));
    } else if (report == null) {
      health.add(new HealthView("Control", "waits for its first reading", true));
    } else {
      health.addAll(control(report.snapshot(), now));
    }
    List<TaskState> tasks = new ArrayList<>(report == null ? List.of() : report.tasks());
    tasks.addAll(ownTasks.get());
    tasks.stream()
        .filter(task -> task.failuresInARow() > 0)
        .map(ShedParts::failing)
        .forEach(health::add);
    health.add(new HealthView("Version", version, false));
    return health;
  }

  private static HealthView failing(TaskState task) {
    return new HealthView(
        "Task " + task.task(),
        "has failed "
            + (task.failuresInARow() == 1 ? "once" : task.failuresInARow() + " times in a row")
            + " and is tried again: "
            + task.trouble(),
        true);
  }

  private static List<HealthView> control(ShedSnapshot snapshot, Tick now) {
    Duration age = Duration.between(snapshot.at(), now.at());
    boolean isLate = age.compareTo(LATE) > 0;
    String skipped =
        snapshot.overruns() == 0 ? "none was late" : snapshot.overruns() + " came too late";
    return List.of(
        new HealthView(
            "Control",
            isLate
                ? "has not looked at the rooms for " + age.toMinutes() + " min"
                : "looked at the rooms " + snapshot.tick() + " times; " + skipped,
            isLate),
        new HealthView(
            "Record",
            snapshot.store().isEmpty() ? "what is measured reaches the disk" : snapshot.store(),
            !snapshot.store().isEmpty()));
  }
}
