package rindward.controller.diagnosis;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.crop.Range;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/** Watches whether the outputs of one room do what they are told. For the control thread. */
final class OutputFactCollector {
  private static final long HOUR_SECONDS = 3600;
  private static final double LEAST_HUMIDITY_PCT = 0.5;
  private static final double LEAST_COOLING_K = 0.3;

  /**
   * Air let in must be this much colder to cool crates and walls within three hours: a fan of 0.03
   * m3/s then takes 1 K from the benchmark shed's 2.3 MJ/K.
   */
  private static final double COLDER_OUTSIDE_K = 6;

  private final StuckHeaterDetector stuck = new StuckHeaterDetector();
  private final DeadExhaustDetector exhaust = new DeadExhaustDetector();
  private final NoEffectDetector humidifier =
      new NoEffectDetector(LEAST_HUMIDITY_PCT, true, HOUR_SECONDS);
  private final NoEffectDetector dehumidifier =
      new NoEffectDetector(LEAST_HUMIDITY_PCT, false, HOUR_SECONDS);
  private final NoEffectDetector cooling =
      new NoEffectDetector(LEAST_COOLING_K, false, 3 * HOUR_SECONDS);

  /**
   * Takes in one tick and adds what it finds.
   *
   * @param picture of the room's air; nothing where its probes cannot be believed
   * @param isHeating whether the heater is commanded on and has power
   * @param outdoorC NaN if unknown
   * @param isFresh whether fruit was carried in lately
   * @param watch of the same room, which has had this tick already
   */
  void look(
      RoomState state,
      Picture picture,
      boolean isHeating,
      double outdoorC,
      boolean isFresh,
      RoomDetectors watch,
      long seconds,
      Set<Finding> findings) {
    double roomC = Thousandths.toDouble(picture.temperatureMilliC());
    double pct = Thousandths.toDouble(picture.humidityMilliPct());
    boolean isVenting = state.isOn(OutputKind.EXHAUST);
    Range wanted = state.demand().range() == null ? state.room().range() : state.demand().range();
    stuck.tick(
        seconds,
        roomC,
        Thousandths.toDouble(wanted.temperature().high()),
        outdoorC,
        isHeating,
        isVenting,
        isFresh,
        watch.usualLiftK());
    exhaust.tick(seconds, roomC, outdoorC, isVenting, isHeating);
    humidifier.tick(seconds, pct, state.isOn(OutputKind.HUMIDIFIER));
    dehumidifier.tick(seconds, pct, state.isOn(OutputKind.DEHUMIDIFIER));
    boolean canCool = isVenting && !isHeating && roomC - outdoorC >= COLDER_OUTSIDE_K;
    cooling.tick(seconds, roomC, canCool || state.isOn(OutputKind.COOLER));
    Map<OutputKind, Output> outputs = state.room().outputs();
    add(outputs.get(OutputKind.HEATER), stuck.isStuck(), AlarmKind.HEATER_RUNAWAY, findings);
    add(
        outputs.get(OutputKind.HEATER),
        watch.isHeaterDead(),
        AlarmKind.HEATER_WITHOUT_EFFECT,
        findings);
    without(outputs.get(OutputKind.EXHAUST), exhaust.isDead(), findings);
    without(outputs.get(OutputKind.HUMIDIFIER), humidifier.isWithout(), findings);
    without(outputs.get(OutputKind.DEHUMIDIFIER), dehumidifier.isWithout(), findings);
    if (cooling.isWithout()) {
      findings.add(new Finding(AlarmKind.COOLING_SLOWER, ""));
    }
  }

  private static void without(@Nullable Output output, boolean isSo, Set<Finding> findings) {
    add(output, isSo, AlarmKind.OUTPUT_WITHOUT_EFFECT, findings);
  }

  private static void add(
      @Nullable Output output, boolean isSo, AlarmKind kind, Set<Finding> findings) {
    if (isSo && output != null) {
      findings.add(new Finding(kind, output.name()));
    }
  }
}
