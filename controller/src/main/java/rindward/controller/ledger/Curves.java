package rindward.controller.ledger;

import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * What was measured in a room, thinned for drawing but exact at its extremes: temperature, humidity
 * and dew point, each with the lowest and the highest sample of every slot. A line breaks off where
 * nothing was measured for longer than a sample holds.
 *
 * <p>The dew point rises and falls with the vapour pressure, which costs one look-up and one
 * multiplication a sample; only the points that stay are turned into dew points.
 */
public record Curves(CurveLine temperature, CurveLine humidity, CurveLine dewPoint) {
  private static final int COLDEST_MILLI_C = -40_000;
  private static final int WARMEST_MILLI_C = 60_000;
  private static final int STEP_MILLI_C = 10;

  /** Saturation pressure in Pa over 1e5, so that times a humidity in thousandths it is in mPa. */
  private static final double[] SATURATION = saturation();

  /**
   * Thins a history.
   *
   * @param slotMillis length of a slot, above zero; with slots shorter than the distance of two
   *     samples every sample stays
   * @param holdMillis how long a sample holds at most, above zero
   */
  public static Curves of(
      History history, long fromMillis, long toMillis, long slotMillis, long holdMillis) {
    if (slotMillis <= 0 || holdMillis <= 0) {
      throw new IllegalArgumentException(
          "a slot was %d ms and the hold limit %d ms but both must be above zero"
              .formatted(slotMillis, holdMillis));
    }
    Walk walk = new Walk(fromMillis, toMillis, slotMillis, holdMillis);
    history.forEach(fromMillis, toMillis, walk::accept);
    return new Curves(
        walk.temperature.line(), walk.humidity.line(), dewPoints(walk.vapourPressure.line()));
  }

  private static final class Walk {
    private final long fromMillis;
    private final long toMillis;
    private final long slotMillis;
    private final long holdMillis;
    private final LineThinner temperature = new LineThinner();
    private final LineThinner humidity = new LineThinner();
    private final LineThinner vapourPressure = new LineThinner();
    private int[] pressures = {};
    private long slotEnd;
    private long lastMillis = Long.MIN_VALUE / 2;

    Walk(long fromMillis, long toMillis, long slotMillis, long holdMillis) {
      this.fromMillis = fromMillis;
      this.toMillis = toMillis;
      this.slotMillis = slotMillis;
      this.holdMillis = holdMillis;
      this.slotEnd = fromMillis;
    }

    void accept(Run run) {
      int end = indexAtOrAfter(run, toMillis);
      int next;
      for (int i = indexAtOrAfter(run, fromMillis); i < end; i = next) {
        long at = run.startMillis() + (long) run.stepMillis() * i;
        if (at - lastMillis > holdMillis) {
          breakOff(lastMillis + holdMillis);
        }
        if (at >= slotEnd) {
          endSlot();
          slotEnd = at + slotMillis - Math.floorMod(at - fromMillis, slotMillis);
        }
        boolean holds = run.stepMillis() <= holdMillis;
        next = holds ? Math.min(end, indexAtOrAfter(run, slotEnd)) : i + 1;
        samples(run, i, next, at);
        lastMillis = at + (long) run.stepMillis() * (next - 1 - i);
      }
    }

    private void samples(Run run, int from, int to, long at) {
      temperature.values(run.temperatureMilliC(), from, to, at, run.stepMillis());
      humidity.values(run.humidityMilliPct(), from, to, at, run.stepMillis());
      if (pressures.length < to - from) {
        pressures = new int[to - from];
      }
      for (int i = from; i < to; i++) {
        pressures[i - from] = pressure(run.temperatureMilliC()[i], run.humidityMilliPct()[i]);
      }
      vapourPressure.values(pressures, 0, to - from, at, run.stepMillis());
    }

    /** In mPa; {@code Thousandths.NONE} for what is not known, or is no air of a shed. */
    private static int pressure(int temperatureMilliC, int humidityMilliPct) {
      if (temperatureMilliC < COLDEST_MILLI_C
          || temperatureMilliC > WARMEST_MILLI_C
          || humidityMilliPct <= 0) {
        return Thousandths.NONE;
      }
      int row = (temperatureMilliC - COLDEST_MILLI_C + STEP_MILLI_C / 2) / STEP_MILLI_C;
      return (int) (SATURATION[row] * humidityMilliPct + 0.5);
    }

    private void endSlot() {
      temperature.endSlot();
      humidity.endSlot();
      vapourPressure.endSlot();
    }

    private void breakOff(long at) {
      temperature.breakOff(at);
      humidity.breakOff(at);
      vapourPressure.breakOff(at);
    }

    private static int indexAtOrAfter(Run run, long millis) {
      long index = Math.floorDiv(millis - run.startMillis() - 1, run.stepMillis()) + 1;
      return (int) Math.max(0, Math.min(run.count(), index));
    }
  }

  private static CurveLine dewPoints(CurveLine vapourPressureMilliPa) {
    int[] pressures = vapourPressureMilliPa.value();
    int[] dewPoints = new int[pressures.length];
    for (int i = 0; i < pressures.length; i++) {
      dewPoints[i] =
          pressures[i] == Thousandths.NONE
              ? Thousandths.NONE
              : Thousandths.of(SaturationPressure.temperatureC(pressures[i] / 1000.0));
    }
    return new CurveLine(vapourPressureMilliPa.atMillis(), dewPoints);
  }

  private static double[] saturation() {
    double[] table = new double[(WARMEST_MILLI_C - COLDEST_MILLI_C) / STEP_MILLI_C + 1];
    for (int i = 0; i < table.length; i++) {
      double temperatureC = (COLDEST_MILLI_C + i * STEP_MILLI_C) / 1000.0;
      table[i] = SaturationPressure.overIceOrWaterPa(temperatureC) / 100.0;
    }
    return table;
  }
}
