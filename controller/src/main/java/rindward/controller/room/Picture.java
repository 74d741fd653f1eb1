package rindward.controller.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/**
 * What a room's probes say together. A value is {@link Thousandths#NONE} where no probe could be
 * trusted.
 *
 * @param temperatureMilliC the working value, the median of the good ones
 * @param coldestMilliC the lowest good temperature
 * @param warmestMilliC the highest good temperature
 * @param humidityMilliPct the working value, the median of the good ones
 * @param driestMilliPct the lowest good humidity
 * @param dampestMilliPct the highest good humidity
 * @param fruitMilliC the lowest good temperature inside a fruit
 * @param oldestSeconds age of the oldest good reading; 0 without any
 * @param unchangedSeconds for how long no good probe has said anything new, as no live one does
 * @param troubles what is wrong, one sentence a probe; empty when all is well
 */
public record Picture(
    int temperatureMilliC,
    int coldestMilliC,
    int warmestMilliC,
    int humidityMilliPct,
    int driestMilliPct,
    int dampestMilliPct,
    int fruitMilliC,
    long oldestSeconds,
    long unchangedSeconds,
    List<String> troubles) {

  /** What is known of a place without a probe: nothing. */
  public static final Picture NONE = of(List.of(), 0);

  /** What air in a shed can be; a value beyond it is the probe's fault. */
  private static final int COLDEST_PLAUSIBLE_MILLI_C = -40_000;

  private static final int WARMEST_PLAUSIBLE_MILLI_C = 60_000;
  private static final int HIGHEST_PLAUSIBLE_MILLI_PCT = 100_000;

  /** Draws the picture at a moment of the monotonic clock. */
  public static Picture of(List<ProbeReading> probes, long nowNanos) {
    int[] temperatures = new int[probes.size()];
    int[] humidities = new int[probes.size()];
    int warmths = 0;
    int damps = 0;
    int fruitMilliC = Thousandths.NONE;
    long oldestNanos = 0;
    long unchangedNanos = Long.MAX_VALUE;
    List<String> troubles = new ArrayList<>(0);
    List<ProbeReading> air = new ArrayList<>(probes.size());
    for (ProbeReading probe : probes) {
      Reading reading = probe.reading();
      if (reading == null || probe.isSilent(nowNanos)) {
        troubles.add(silent(probe, reading, nowNanos - probe.takenNanos()));
      } else if (probe.isFrozen()) {
        troubles.add(frozen(probe.probe()));
      } else if (!isPlausible(reading)) {
        troubles.add(implausible(probe.probe(), reading));
      } else if (probe.place() == ProbePlace.PULP) {
        int pulp = reading.temperatureMilliC();
        fruitMilliC = fruitMilliC == Thousandths.NONE ? pulp : Math.min(fruitMilliC, pulp);
      } else {
        air.add(probe);
        temperatures[warmths++] = reading.temperatureMilliC();
        if (reading.hasHumidity() && !Doubts.isDrowned(probe, probes)) {
          humidities[damps++] = reading.humidityMilliPct();
        }
        oldestNanos = Math.max(oldestNanos, nowNanos - probe.takenNanos());
        unchangedNanos = Math.min(unchangedNanos, nowNanos - probe.sameSinceNanos());
      }
    }
    Doubts.tell(air, troubles);
    Arrays.sort(temperatures, 0, warmths);
    Arrays.sort(humidities, 0, damps);
    return new Picture(
        median(temperatures, warmths),
        warmths == 0 ? Thousandths.NONE : temperatures[0],
        warmths == 0 ? Thousandths.NONE : temperatures[warmths - 1],
        median(humidities, damps),
        damps == 0 ? Thousandths.NONE : humidities[0],
        damps == 0 ? Thousandths.NONE : humidities[damps - 1],
        fruitMilliC,
        oldestNanos / 1_000_000_000L,
        warmths == 0 ? 0 : unchangedNanos / 1_000_000_000L,
        List.copyOf(troubles));
  }

  /** Tells whether any probe gave a temperature that can be trusted. */
  public boolean hasTemperature() {
    return temperatureMilliC != Thousandths.NONE;
  }

  /** Tells whether any probe gave a humidity that can be trusted. */
  public boolean hasHumidity() {
    return humidityMilliPct != Thousandths.NONE;
  }

  /** Tells whether a probe inside a fruit gave a temperature that can be trusted. */
  public boolean hasFruit() {
    return fruitMilliC != Thousandths.NONE;
  }

  /** Tells whether air or fruit in a shed can be like that. */
  public static boolean isPlausible(Reading reading) {
    return reading.temperatureMilliC() >= COLDEST_PLAUSIBLE_MILLI_C
        && reading.temperatureMilliC() <= WARMEST_PLAUSIBLE_MILLI_C
        && (!reading.hasHumidity()
            || (reading.humidityMilliPct() >= 0
                && reading.humidityMilliPct() <= HIGHEST_PLAUSIBLE_MILLI_PCT));
  }

  private static String silent(ProbeReading probe, @Nullable Reading reading, long ageNanos) {
    String since =
        reading == null ? "has given no value yet" : "last answered " + seconds(ageNanos) + " ago";
    return "Probe "
        + probe.probe()
        + " "
        + since
        + (probe.failure() == null ? "." : ": " + probe.failure());
  }

  /** With everything off the air must move sooner or later, and a live probe with it. */
  private static String frozen(String probe) {
    return "Probe " + probe + " has said exactly the same for more than an hour; it is not used.";
  }

  private static String implausible(String probe, Reading reading) {
    return "Probe "
        + probe
        + " says "
        + Thousandths.toDouble(reading.temperatureMilliC())
        + " C and "
        + Thousandths.toDouble(reading.humidityMilliPct())
        + " %, which air in a shed cannot be.";
  }

  private static String seconds(long nanos) {
    return nanos / 1_000_000_000L + " s";
  }

  private static int median(int[] sorted, int count) {
    if (count == 0) {
      return Thousandths.NONE;
    }
    return Math.floorDiv(sorted[(count - 1) / 2] + sorted[count / 2], 2);
  }
}
