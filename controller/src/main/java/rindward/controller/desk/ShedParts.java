package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.control.Tick;
import rindward.controller.room.Output;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.task.TaskHealth;
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
  private static final long LONGEST_MANUAL_MINUTES = 24 * 60;
  private static final Duration LATE = Duration.ofMinutes(2);

  private final String version;
  private final List<ProbeSetting> probes;
  private final Function<String, ProbeReading> latestOf;
  private final Supplier<@Nullable ShedSnapshot> latest;
  private final Supplier<List<TaskHealth>> tasks;
  private final HandSwitching switches;
  private final Supplier<Tick> time;

  /**
   * @param latestOf the latest of a probe, for any thread
   * @param latest the last snapshot; null before the first tick
   * @param tasks how everything is doing that runs by itself
   * @param switches takes what is switched by hand
   */
  public ShedParts(
      String version,
      List<ProbeSetting> probes,
      Function<String, ProbeReading> latestOf,
      Supplier<@Nullable ShedSnapshot> latest,
      Supplier<List<TaskHealth>> tasks,
      HandSwitching switches,
      Supplier<Tick> time) {
    this.version = version;
    this.probes = List.copyOf(probes);
    this.latestOf = latestOf;
    this.latest = latest;
    this.tasks = tasks;
    this.switches = switches;
    this.time = time;
  }

  @Override
  public ShedView shed() {
    ShedSnapshot snapshot = latest.get();
    Tick now = time.get();
    List<OutputView> outputs = new ArrayList<>();
    if (snapshot != null) {
      snapshot.rooms().forEach(state -> addOutputs(state, now.at(), outputs));
    }
    return new ShedView(
        snapshot == null ? now.at() : snapshot.at(),
        probes.stream().map(probe -> probe(probe, now)).toList(),
        outputs,
        health(snapshot, now),
        LONGEST_MANUAL_MINUTES);
  }

  @Override
  public void command(ManualCommand command) throws SwitchingRefused {
    RoomState state = room(command.room());
    Output output = output(state, command.kind());
    OutputDecision ruling = state.rulings().get(output.kind());
    Precedence right = command.on() ? Precedence.MANUAL_ON : Precedence.MANUAL_OFF;
    if (ruling != null && ruling.on() != command.on() && ruling.right().compareTo(right) < 0) {
      throw new SwitchingRefused(
          "The %s cannot be switched %s now. %s"
              .formatted(
                  output.kind().word(), command.on() ? "on" : "off", ruling.reason().sentence()));
    }
    Optional<String> refusal =
        switches.command(
            command.room(),
            new rindward.controller.room.ManualCommand(
                output.kind(), command.on(), command.until(), command.by()),
            now());
    if (refusal.isPresent()) {
      throw new SwitchingRefused(refusal.get());
    }
  }

  @Override
  public void release(String room, String kind, String by) throws SwitchingRefused {
    switches.release(room, output(room(room), kind).kind(), now());
  }

  @Override
  public Instant now() {
    return time.get().at();
  }

  private ProbeView probe(ProbeSetting setting, Tick now) {
    ProbeReading known = latestOf.apply(setting.name());
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

  private void addOutputs(RoomState state, Instant now, List<OutputView> outputs) {
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
              manual(state.room(), output, now),
              failure == null ? null : "It cannot be switched: " + failure));
    }
  }

  private @Nullable ManualView manual(Room room, Output output, Instant now) {
    var command = switches.of(room, now).command(output.kind());
    return command == null || !command.until().isAfter(now)
        ? null
        : new ManualView(command.on(), command.until(), command.by());
  }

  private RoomState room(String name) throws SwitchingRefused {
    ShedSnapshot snapshot = latest.get();
    if (snapshot == null) {
      throw new SwitchingRefused("The rooms have not been looked at yet; try again in a moment.");
    }
    for (RoomState state : snapshot.rooms()) {
      if (state.room().name().equals(name)) {
        return state;
      }
    }
    throw new SwitchingRefused("There is no room " + name + ".");
  }

  private static Output output(RoomState state, String kind) throws SwitchingRefused {
    for (Output output : state.room().outputs().values()) {
      if (output.kind().word().equals(kind)) {
        return output;
      }
    }
    throw new SwitchingRefused("The room " + state.room().name() + " has no " + kind + ".");
  }

  private List<HealthView> health(@Nullable ShedSnapshot snapshot, Tick now) {
    List<HealthView> health = new ArrayList<>(control(snapshot, now));
    tasks.get().stream()
        .filter(task -> task.failuresInARow() > 0)
        .map(ShedParts::failing)
        .forEach(health::add);
    health.add(new HealthView("Version", version, false));
    return health;
  }

  private static HealthView failing(TaskHealth task) {
    return new HealthView(
        "Task " + task.task(),
        "has failed "
            + (task.failuresInARow() == 1 ? "once" : task.failuresInARow() + " times in a row")
            + " and is tried again: "
            + task.trouble(),
        true);
  }

  private static List<HealthView> control(@Nullable ShedSnapshot snapshot, Tick now) {
    if (snapshot == null) {
      return List.of(new HealthView("Control", "waits for its first reading", true));
    }
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
