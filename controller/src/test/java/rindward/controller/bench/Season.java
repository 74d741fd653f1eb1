package rindward.controller.bench;

import java.time.Instant;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.hardware.Thousandths;

/**
 * An invented storage season, the same every time: 1.5 million samples 10 s apart in a room that
 * hugs the limits of its range, as controlled rooms do, with an hour missing every eleventh day and
 * a humidity probe that fails now and then.
 */
final class Season {
  static final String ROOM = "storage";
  static final long FROM_SECOND = Instant.parse("2025-10-01T00:00:00Z").getEpochSecond();
  static final int STEP_SECONDS = 10;
  static final int DAYS = 174;
  static final int SLOTS = DAYS * 86_400 / STEP_SECONDS;
  static final long TO_SECOND = FROM_SECOND + (long) SLOTS * STEP_SECONDS;
  static final long HOLD_SECONDS = 300;
  static final Range RANGE = new Range(new Limits(10_000, 15_000), new Limits(50_000, 70_000));
  static final Accuracy ACCURACY = new Accuracy(300, 2_000);

  private static final int HOUR = 360;

  private Season() {}

  /** What is done with a sample; values in thousandths. */
  @FunctionalInterface
  interface Visit<E extends Exception> {
    void sample(long second, int temperatureMilliC, int humidityMilliPct) throws E;
  }

  /** Hands over the samples in time order and returns how many there are. */
  static <E extends Exception> int forEach(Visit<E> visit) throws E {
    int count = 0;
    for (int slot = 0; slot < SLOTS; slot++) {
      int day = slot / (24 * HOUR);
      boolean missing = day % 11 == 10 && slot / HOUR % 24 == 3;
      if (!missing) {
        visit.sample(FROM_SECOND + (long) slot * STEP_SECONDS, temperature(slot), humidity(slot));
        count++;
      }
    }
    return count;
  }

  private static int temperature(int slot) {
    double heater = 0.4 * Math.sin(slot / 30.0);
    double weather = 0.8 * Math.sin(slot / (24.0 * HOUR) * 2 * Math.PI);
    return Thousandths.ofHundredths(10.3 + heater + weather + noise(slot));
  }

  private static int humidity(int slot) {
    if (slot % 5_000 < 40) {
      return Thousandths.NONE;
    }
    double weather = 6 * Math.sin(slot / (7.0 * 24 * HOUR) * 2 * Math.PI);
    return Thousandths.ofHundredths(66 + weather + 10 * noise(slot + 1));
  }

  /** A number within +-0.05 that looks random and is the same every time. */
  private static double noise(int slot) {
    int mixed = slot * 0x9E3779B1;
    mixed = (mixed ^ (mixed >>> 15)) * 0x85EBCA77;
    return ((mixed >>> 16) / 65_536.0 - 0.5) / 10;
  }
}
