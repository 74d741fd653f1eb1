package rindward.controller.keeping;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The losses that a fruit watched until some day was to expect (Nelson 1972; Aalen 1978). */
final class CumulativeHazard {
  private final NavigableMap<Integer, Double> byDay;

  private CumulativeHazard(NavigableMap<Integer, Double> byDay) {
    this.byDay = byDay;
  }

  static CumulativeHazard of(List<Fate> fates) {
    TreeMap<Integer, int[]> ended = new TreeMap<>();
    int atRisk = 0;
    for (Fate fate : fates) {
      int[] counts = ended.computeIfAbsent(fate.day(), day -> new int[2]);
      counts[0] += fate.fruits();
      counts[1] += fate.ending().isLoss() ? fate.fruits() : 0;
      atRisk += fate.fruits();
    }
    TreeMap<Integer, Double> hazard = new TreeMap<>();
    double sum = 0;
    for (var day : ended.entrySet()) {
      sum += (double) day.getValue()[1] / atRisk;
      hazard.put(day.getKey(), sum);
      atRisk -= day.getValue()[0];
    }
    return new CumulativeHazard(hazard);
  }

  /** Returns the losses expected of one fruit up to and including a day. */
  double at(int day) {
    var entry = byDay.floorEntry(day);
    return entry == null ? 0 : entry.getValue();
  }
}
