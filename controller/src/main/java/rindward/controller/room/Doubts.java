package rindward.controller.room;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import rindward.hardware.Reading;

/**
 * What a room's air probes give away about each other. Nothing here is left out of the picture but
 * the humidity of a probe that is wet: which of two that disagree is right, only a person can tell,
 * and until then the control believes the worse one.
 */
final class Doubts {
  /** More than floor and roof of one room differ by (judgement). */
  private static final int DISPUTED_MILLI_C = 3_000;

  private static final int DISPUTED_MILLI_PCT = 20_000;
  private static final int DROWNED_MILLI_PCT = 99_500;
  private static final int DRY_MILLI_PCT = 90_000;

  private Doubts() {}

  /** Adds a sentence for everything that is doubtful about good readings of air. */
  static void tell(List<ProbeReading> air, List<String> troubles) {
    for (ProbeReading probe : air) {
      if (isAtFull(probe)) {
        troubles.add(
            "Probe " + probe.probe() + " says 100 %: it is wet, or the air drips; go and look.");
      }
    }
    if (air.size() < 2) {
      return;
    }
    dispute(air, DISPUTED_MILLI_C, Doubts::warmth, ProbeReading::temperature, troubles);
    dispute(
        air.stream().filter(Doubts::hasHumidity).toList(),
        DISPUTED_MILLI_PCT,
        Doubts::damp,
        ProbeReading::humidity,
        troubles);
  }

  /** Tells whether a probe says 100 % while another in the room is well below: it is wet. */
  static boolean isDrowned(ProbeReading probe, List<ProbeReading> all) {
    return isAtFull(probe) && all.stream().anyMatch(p -> hasHumidity(p) && damp(p) < DRY_MILLI_PCT);
  }

  private static void dispute(
      List<ProbeReading> air,
      int allowed,
      ToIntFunction<ProbeReading> value,
      Function<ProbeReading, String> shown,
      List<String> troubles) {
    List<ProbeReading> sorted = air.stream().sorted(Comparator.comparingInt(value)).toList();
    if (sorted.size() < 2) {
      return;
    }
    ProbeReading low = sorted.get(0);
    ProbeReading high = sorted.get(sorted.size() - 1);
    if (value.applyAsInt(high) - value.applyAsInt(low) > allowed) {
      troubles.add(
          "Probes %s and %s disagree: %s and %s. Compare them with a thermometer of your own."
              .formatted(low.probe(), high.probe(), shown.apply(low), shown.apply(high)));
    }
  }

  private static boolean isAtFull(ProbeReading probe) {
    return hasHumidity(probe) && damp(probe) >= DROWNED_MILLI_PCT;
  }

  private static boolean hasHumidity(ProbeReading probe) {
    Reading reading = probe.reading();
    return reading != null && reading.hasHumidity();
  }

  private static int warmth(ProbeReading probe) {
    Reading reading = probe.reading();
    return reading == null ? 0 : reading.temperatureMilliC();
  }

  private static int damp(ProbeReading probe) {
    Reading reading = probe.reading();
    return reading == null ? 0 : reading.humidityMilliPct();
  }
}
