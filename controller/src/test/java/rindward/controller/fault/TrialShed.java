package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.diagnosis.RoomDetectors;
import rindward.controller.diagnosis.UncommandedHeat;
import rindward.controller.diagnosis.WatchedAir;
import rindward.controller.room.Picture;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.SimulatedShed;

/**
 * The example's shed in a cold January, 200 kg in each room, run by the daemon itself on time moved
 * by hand; it has settled for half a day before anything breaks. What is broken is broken in the
 * storage room unless its row says otherwise.
 */
final class TrialShed implements AutoCloseable {
  static final String STORAGE = "storage";
  static final String CURING = "curing";
  static final Instant START = Instant.parse("2027-01-12T06:00:00Z");
  static final Instant SEPTEMBER = Instant.parse("2026-09-20T05:00:00Z");
  private static final long NOT_YET = -1;
  private static final Duration SETTLING = Duration.ofHours(12);

  final Settings settings;
  final Time.Stepped time;
  final SimulatedShed shed;
  final Daemon daemon;
  private final Map<String, RoomDetectors> watches = new HashMap<>();
  private final AlarmTable alarms = AlarmTableReader.builtIn();
  private final Map<AlarmKind, Long> calledNanos = new LinkedHashMap<>();
  private final Set<AlarmKind> openBefore = new HashSet<>();
  private long brokenNanos = NOT_YET;
  private boolean isMended;

  private TrialShed(Settings settings, Instant start) throws IOException {
    this.settings = settings;
    time = new Time.Stepped(start);
    shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    for (String room : List.of(CURING, STORAGE)) {
      shed.load(room, FruitLoad.winterSquash("lot-" + room, 200, 12));
      watches.put(room, new RoomDetectors());
    }
    daemon = new Daemon(settings, shed, time, false);
  }

  /** Opens the shed in a folder, settled; {@code more} is added to its settings. */
  static TrialShed settled(Path folder, String more) throws Exception {
    TrialShed trial = new TrialShed(settings(folder, more), START);
    trial.live(SETTLING);
    return trial;
  }

  static TrialShed settled(Path folder) throws Exception {
    return settled(folder, "");
  }

  /** Opens the shed in September, while it cures, settled; the text of its settings is changed. */
  static TrialShed inSeptember(Path folder, UnaryOperator<String> change) throws Exception {
    TrialShed trial = new TrialShed(settings(folder, change), SEPTEMBER);
    trial.live(SETTLING);
    return trial;
  }

  /** Opens a shed of these settings, just started. */
  static TrialShed of(Settings settings) throws IOException {
    return new TrialShed(settings, START);
  }

  /** Opens the shed just started, on whatever lies in the folder. */
  static TrialShed started(Path folder) throws Exception {
    return new TrialShed(settings(folder, ""), START);
  }

  static Settings settings(Path folder, String more) throws IOException {
    return settings(folder, example -> example + more);
  }

  static Settings settings(Path folder, UnaryOperator<String> change) throws IOException {
    Path file = folder.resolve("shed.toml");
    String example = Files.readString(Path.of("examples/shed.toml"));
    // The example's heater is too small to cure in January.
    Files.writeString(file, change.apply(example.replaceFirst("power_w = 750", "power_w = 1500")));
    return SettingsReader.read(file, new Problems()).orElseThrow();
  }

  /** Returns one more simulated air probe for the storage room. */
  static String probe(String name) {
    return """

    [probes.%s]
    room = "storage"
    driver = "simulated"
    accuracy = { temperature = 0.2, humidity = 2 }
    """
        .formatted(name);
  }

  ShedFault breaks(ShedFault.Kind kind, String target, double amount) {
    return breaks(ShedFault.of(kind, target, amount));
  }

  ShedFault breaks(ShedFault fault) {
    watchesCalls();
    shed.inject(fault);
    return fault;
  }

  /** From now on alarms that are raised belong to what is tried, if they do not already. */
  void watchesCalls() {
    if (brokenNanos == NOT_YET) {
      brokenNanos = time.now().nanos();
      openBefore.addAll(open());
    }
  }

  /** Tells whether the heartbeat has stopped for a heater, so that the relay before all opens. */
  boolean isHeartbeatStopped() {
    return UncommandedHeat.isIn(daemon.latest());
  }

  /** Ends a fault; alarms that come afterwards are not its own. */
  void mends(ShedFault fault) {
    shed.clear(fault);
    isMended = true;
  }

  void tick() throws InterruptedException {
    time.advance(settings.tick());
    daemon.step();
    if (brokenNanos != NOT_YET && !isMended) {
      open().forEach(kind -> calledNanos.putIfAbsent(kind, time.now().nanos() - brokenNanos));
    }
    for (RoomState room : daemon.latest().rooms()) {
      boolean isVenting = isOn(room, OutputKind.EXHAUST);
      watches
          .get(room.room().name())
          .tick(
              time.now().nanos() / 1_000_000_000L,
              air(room.picture()),
              air(daemon.latest().outdoors()),
              isOn(room, OutputKind.HEATER),
              true,
              isVenting,
              isOn(room, OutputKind.HUMIDIFIER) || isOn(room, OutputKind.DEHUMIDIFIER),
              10_000);
    }
  }

  void live(Duration stretch) throws InterruptedException {
    for (long i = stretch.dividedBy(settings.tick()); i > 0; i--) {
      tick();
    }
  }

  /** Lives until something is so; returns how long that took. */
  Duration until(BooleanSupplier isSo, Duration most) throws InterruptedException {
    long from = time.now().nanos();
    while (!isSo.getAsBoolean()) {
      assertThat(Duration.ofNanos(time.now().nanos() - from)).isLessThan(most);
      tick();
    }
    return Duration.ofNanos(time.now().nanos() - from);
  }

  /** Lives until the storage room has been heated for a tick. */
  void untilHeating() throws InterruptedException {
    until(() -> isCommanded(STORAGE, OutputKind.HEATER), Duration.ofHours(12));
  }

  RoomState room(String name) {
    return daemon.latest().rooms().stream()
        .filter(r -> r.room().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  OutputDecision ruling(String room, OutputKind kind) {
    return room(room).rulings().get(kind);
  }

  boolean isCommanded(String room, OutputKind kind) {
    return isOn(room(room), kind);
  }

  String reason(OutputKind kind) {
    return ruling(STORAGE, kind).reason().sentence();
  }

  RoomDetectors watch(String room) {
    return watches.get(room);
  }

  double airC(String room) {
    return shed.truth(room).airC();
  }

  private List<AlarmKind> open() {
    return daemon.latest() == null
        ? List.of()
        : daemon.latest().judgement().open(alarms).stream().map(AlarmId::kind).toList();
  }

  /** Returns how long after the fault an alarm of that kind was raised. */
  Duration calledAfter(AlarmKind kind) {
    assertThat(calledNanos).containsKey(kind);
    return Duration.ofNanos(calledNanos.get(kind));
  }

  /** Returns what was called about since something broke, in that order. */
  List<AlarmKind> calls() {
    return calledNanos.keySet().stream().filter(kind -> !openBefore.contains(kind)).toList();
  }

  /** Returns what a scenario found, with the alarms that were raised in it. */
  FaultRow row(String fault, String does, String soon, String reports, String after) {
    String calls =
        calledNanos.entrySet().stream()
            .filter(called -> !openBefore.contains(called.getKey()))
            .map(
                called ->
                    alarms.row(called.getKey()).name()
                        + " after "
                        + said(Duration.ofNanos(called.getValue())))
            .collect(Collectors.joining(", "));
    return new FaultRow(
        fault, does, soon, reports + (calls.isEmpty() ? "" : ". Alarms: " + calls), after);
  }

  /** Returns for how long an output has really been on. */
  Duration on(String relay) throws IOException {
    return Duration.ofSeconds(Math.round(shed.meter(relay).hoursOn() * 3600));
  }

  /** Returns every sentence that the pages show of a room. */
  List<String> told(String room) {
    List<String> told = new ArrayList<>(room(room).picture().troubles());
    told.addAll(room(room).failures().values());
    return told;
  }

  boolean isTold(String part) {
    return told(STORAGE).stream().anyMatch(sentence -> sentence.contains(part));
  }

  boolean isAllOff(String room) {
    return room(room).rulings().values().stream().noneMatch(OutputDecision::on);
  }

  private static WatchedAir air(Picture picture) {
    return WatchedAir.of(picture.temperatureMilliC(), picture.humidityMilliPct());
  }

  private static boolean isOn(RoomState room, OutputKind kind) {
    OutputDecision ruling = room.rulings().get(kind);
    return ruling != null && ruling.on();
  }

  /** Returns a length of time as a person says it. */
  static String said(Duration time) {
    return time.compareTo(Duration.ofMinutes(3)) < 0
        ? time.toSeconds() + " s"
        : (time.toSeconds() + 59) / 60 + " min";
  }

  @Override
  public void close() {
    daemon.close();
  }
}
