package rindward.controller.season;

import java.util.EnumMap;
import java.util.Map;
import rindward.controller.crop.Range;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.RoomTruth;

/** What one season was like in one room, judged by the model's truth and not by a probe. */
final class SeasonScore {
  /** Air and fruit below this are counted as chilled, as published for winter squash. */
  static final double CHILLING_C = 10;

  double scoredHours;
  double inRangeHours;
  double coldHours;
  double warmHours;
  double dryHours;
  double dampHours;
  double airChillingKh;
  double fruitChillingKh;
  double wetHours;
  double coldestC = Double.MAX_VALUE;
  double meanC;
  final Map<OutputKind, Double> kWh = new EnumMap<>(OutputKind.class);
  final Map<OutputKind, Double> hoursOn = new EnumMap<>(OutputKind.class);
  final Map<OutputKind, Integer> switchings = new EnumMap<>(OutputKind.class);

  /** Counts a stretch during which the room should have been in that range. */
  void count(RoomTruth truth, Range range, double hours) {
    double t = truth.airC() * 1000;
    double h = truth.relativeHumidityPct() * 1000;
    boolean cold = t < range.temperature().low();
    boolean warm = t > range.temperature().high();
    boolean dry = h < range.humidity().low();
    boolean damp = h > range.humidity().high();
    scoredHours += hours;
    inRangeHours += cold || warm || dry || damp ? 0 : hours;
    coldHours += cold ? hours : 0;
    warmHours += warm ? hours : 0;
    dryHours += dry ? hours : 0;
    dampHours += damp ? hours : 0;
    meanC += truth.airC() * hours;
    coldestC = Math.min(coldestC, truth.airC());
  }

  /** Counts what harms fruit wherever it lies. */
  void countHarm(RoomTruth truth, double hours) {
    wetHours += truth.wetFruit() ? hours : 0;
    if (!Double.isNaN(truth.coldestFruitC())) {
      airChillingKh += Math.max(0, CHILLING_C - truth.airC()) * hours;
      fruitChillingKh += Math.max(0, CHILLING_C - truth.coldestFruitC()) * hours;
    }
  }

  double inRangeShare() {
    return scoredHours == 0 ? 0 : inRangeHours / scoredHours;
  }

  double totalKWh() {
    return kWh.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  int totalSwitchings() {
    return switchings.values().stream().mapToInt(Integer::intValue).sum();
  }
}
