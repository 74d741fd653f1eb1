package rindward.controller.diagnosis;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.RoomFacts;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.Tick;
import rindward.controller.crop.Range;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;

/** Watches one room and says what the alarms must know of it. For the control thread. */
final class RoomFactCollector {
  private static final int HIGH_LIMIT_MILLI_C = 35_000;
  private static final int ABOVE_RANGE_MILLI_K = 6_000;

  /** Where nothing chills, cold outside is what could freeze the stock by morning. */
  private static final int FROST_MILLI_C = 2_000;

  private static final int BAND_MILLI_K = 1_000;
  private static final Duration SETTLES = Duration.ofHours(6);

  /** What a room at rest may do as it likes. */
  private static final Set<AlarmKind> SILENT_AT_REST =
      EnumSet.of(
          AlarmKind.CHILLING,
          AlarmKind.NEAR_FREEZING,
          AlarmKind.COLD_AIR,
          AlarmKind.TOO_WARM,
          AlarmKind.TOO_DAMP,
          AlarmKind.TOO_DRY,
          AlarmKind.CONDENSATION,
          AlarmKind.COOLING_FASTER,
          AlarmKind.COOLING_SLOWER,
          AlarmKind.DOOR_OPEN,
          AlarmKind.UNHELD_IN_COLD);

  private final Room room;
  private final Set<OutputKind> canSwitch;
  private final double pressurePa;
  private final ProbeFactCollector probes;
  private final OutputFactCollector outputs = new OutputFactCollector();
  private final RoomDetectors watch = new RoomDetectors();
  private final FruitFollower fruit = new FruitFollower();
  private boolean isColdOutside;

  RoomFactCollector(Room room, List<String> probes, double pressurePa) {
    this.room = room;
    this.canSwitch = Set.copyOf(room.outputs().keySet());
    this.pressurePa = pressurePa;
    this.probes = new ProbeFactCollector(probes);
  }

  /**
   * Takes in one tick.
   *
   * @param isHeating whether the heater is commanded on and has power
   * @param isColdHalf whether this is the cold half of the year, for where nobody measures outdoors
   * @param accepted what the grower has accepted here
   */
  RoomFacts look(
      RoomState state,
      boolean isHeating,
      Picture outdoors,
      boolean isColdHalf,
      LotNotes lots,
      Set<AlarmKind> accepted,
      Function<String, ProbeReading> latestOf,
      Tick now) {
    long seconds = now.nanos() / 1_000_000_000L;
    int chilling = state.demand().stock().chillingMilliC();
    boolean isVenting = state.isOn(OutputKind.EXHAUST);
    Set<Finding> findings = new HashSet<>(lots.ofRooms().getOrDefault(room.name(), Set.of()));
    boolean isRunning = state.rulings().values().stream().anyMatch(ruling -> ruling.on());
    probes.look(latestOf, isRunning, isHeating, now.nanos(), findings);
    Picture picture = probes.isBlind() ? Picture.NONE : state.picture();
    watch.tick(
        seconds,
        WatchedAir.of(picture.temperatureMilliC(), picture.humidityMilliPct()),
        WatchedAir.of(outdoors.temperatureMilliC(), outdoors.humidityMilliPct()),
        isHeating,
        canHeat(state),
        isVenting,
        state.isOn(OutputKind.HUMIDIFIER) || state.isOn(OutputKind.DEHUMIDIFIER),
        chilling);
    fruit.tick(seconds, picture.temperatureMilliC(), state.picture().fruitMilliC());
    if (watch.isFallingFast()) {
      findings.add(new Finding(AlarmKind.COOLING_FASTER, ""));
    }
    double outdoorC = Thousandths.toDouble(outdoors.temperatureMilliC());
    boolean isFresh = isFresh(state, now.at());
    outputs.look(state, picture, isHeating, outdoorC, isFresh, watch, seconds, findings);
    senseOutdoors(outdoors.temperatureMilliC(), chilling, isColdHalf);
    return facts(state, picture, lots, accepted, findings);
  }

  private RoomFacts facts(
      RoomState state,
      Picture picture,
      LotNotes lots,
      Set<AlarmKind> accepted,
      Set<Finding> findings) {
    Range asked = state.demand().range();
    boolean isAtRest = asked == null;
    Range wanted = asked == null ? room.range() : asked;
    Set<AlarmKind> silent = accepted;
    if (isAtRest) {
      silent = new HashSet<>(accepted);
      silent.addAll(SILENT_AT_REST);
    }
    // Where nobody writes down any lot, every room may hold some.
    boolean isUntold = lots.freezingMilliC().isEmpty();
    boolean hasStock = lots.freezingMilliC().containsKey(room.name());
    return new RoomFacts(
        room.name(),
        canSwitch,
        wanted,
        picture.coldestMilliC(),
        picture.warmestMilliC(),
        picture.humidityMilliPct(),
        dewPoint(picture),
        hasStock ? fruit.milliC() : Thousandths.NONE,
        hasStock ? state.demand().stock().chillingMilliC() : Thousandths.NONE,
        lots.freezingMilliC().getOrDefault(room.name(), Thousandths.NONE),
        Math.max(HIGH_LIMIT_MILLI_C, wanted.temperature().high() + ABOVE_RANGE_MILLI_K),
        hasStock ? watch.minutesToCold() : RoomFacts.NOT_FORECAST,
        isColdOutside && !isAtRest && (hasStock || isUntold),
        findings,
        silent);
  }

  /** With a band, so that a temperature on the edge does not turn one alarm into another. */
  private void senseOutdoors(int outdoorMilliC, int chillingMilliC, boolean isColdHalf) {
    int edge = Math.max(FROST_MILLI_C, chillingMilliC);
    if (outdoorMilliC == Thousandths.NONE) {
      isColdOutside = isColdHalf;
    } else if (outdoorMilliC < edge) {
      isColdOutside = true;
    } else if (outdoorMilliC > edge + BAND_MILLI_K) {
      isColdOutside = false;
    }
  }

  private static boolean canHeat(RoomState state) {
    ManualCommand byHand = state.demand().command(OutputKind.HEATER);
    return state.room().has(OutputKind.HEATER)
        && !state.room().observeOnly()
        && (byHand == null || byHand.on());
  }

  private static boolean isFresh(RoomState state, Instant at) {
    Instant newest = state.demand().stock().newest();
    return newest != null && at.isBefore(newest.plus(SETTLES));
  }

  private int dewPoint(Picture picture) {
    return picture.hasTemperature() && picture.humidityMilliPct() > 0
        ? Thousandths.of(
            new MoistAir(
                    Thousandths.toDouble(picture.temperatureMilliC()),
                    Thousandths.toDouble(picture.humidityMilliPct()),
                    pressurePa)
                .dewPointC())
        : Thousandths.NONE;
  }
}
