package rindward.controller.command.shed;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Predicate;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.sensor.Pause;
import rindward.hardware.sensor.SaturatedSalt;
import rindward.hardware.wired.Offset;

/**
 * Compares one probe with something better, with a person who puts it there: its temperature with a
 * thermometer beside it, its humidity with the air over one salt or two. A probe that has not come
 * to rest, or is off by more than any that is worth keeping, is not set right but refused.
 */
final class Comparison {
  private static final int READINGS = 12;
  private static final int PAUSE_MILLIS = 5_000;

  /** A sensor that still moves by more than this in a minute has not settled. */
  private static final int SETTLED_MILLI_PCT = 500;

  private static final int SETTLED_MILLI_C = 200;

  /** A probe that is off by more is broken, or in the wrong jar. */
  private static final int MOST_OFF_MILLI_PCT = 10_000;

  private static final int MOST_OFF_MILLI_C = 3_000;
  private static final double MILLION = 1_000_000;

  private final Probe probe;
  private final Pause pause;
  private final Predicate<String> asks;

  /**
   * @param probe as it says it, with nothing added
   * @param asks puts a question to the person; anything but a plain yes is false
   */
  Comparison(Probe probe, Pause pause, Predicate<String> asks) {
    this.probe = probe;
    this.pause = pause;
    this.asks = asks;
  }

  /** What the probe said of a salt's air, and what that air was. */
  private record Point(int said, int real) {
    int off() {
      return real - said;
    }
  }

  /**
   * Compares with a thermometer that hangs beside the probe.
   *
   * @param realMilliC what that thermometer says, thousandths of a degree C
   * @return empty when the person did not agree
   * @throws IOException in one sentence, when the probe cannot be set right by this
   */
  Optional<Offset> withThermometer(int realMilliC) throws IOException {
    if (!asks.test("Has the thermometer hung beside the probe for half an hour, out of the sun?")) {
      return Optional.empty();
    }
    int off = realMilliC - settled().temperatureMilliC();
    if (Math.abs(off) > MOST_OFF_MILLI_C) {
      throw tooFarOff(off, "C");
    }
    return Optional.of(new Offset(off, 0));
  }

  /**
   * Compares with table salt alone: what is found there is added everywhere.
   *
   * @return empty when the person did not agree
   * @throws IOException in one sentence, when the probe cannot be set right by this
   */
  Optional<Offset> withOneSalt() throws IOException {
    Optional<Point> point = over(SaturatedSalt.SODIUM_CHLORIDE);
    return point.map(p -> new Offset(0, p.off()));
  }

  /**
   * Compares with both salts: a straight line through what is found.
   *
   * @return empty when the person did not agree
   * @throws IOException in one sentence, when the probe cannot be set right by this
   */
  Optional<Offset> withTwoSalts() throws IOException {
    Optional<Point> low = over(SaturatedSalt.MAGNESIUM_CHLORIDE);
    Optional<Point> high = low.isEmpty() ? low : over(SaturatedSalt.SODIUM_CHLORIDE);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    // Both lie within 10 % of values 40 % apart, so they differ.
    double gain = (double) (high.get().real - low.get().real) / (high.get().said - low.get().said);
    int millionths = Math.toIntExact(Math.round(gain * MILLION));
    long added = Math.round(low.get().real - low.get().said * (millionths / MILLION));
    return Optional.of(new Offset(0, Math.toIntExact(added), millionths));
  }

  private Optional<Point> over(SaturatedSalt salt) throws IOException {
    if (!asks.test(
        "Has the probe been in a closed jar over wet "
            + salt.words()
            + ", not touching it, for an hour at a steady temperature?")) {
      return Optional.empty();
    }
    Reading said = settled();
    if (!said.hasHumidity()) {
      throw new IOException("probe " + probe.name() + " has no humidity to compare");
    }
    if (!SaturatedSalt.isKnownAt(said.temperatureMilliC())) {
      throw new IOException("the jar must be at 5 to 30 C, but the probe says otherwise");
    }
    Point point =
        new Point(said.humidityMilliPct(), salt.humidityMilliPct(said.temperatureMilliC()));
    if (Math.abs(point.off()) > MOST_OFF_MILLI_PCT) {
      throw tooFarOff(point.off(), "%");
    }
    return Optional.of(point);
  }

  /** Returns the mean of a minute in which the probe was at rest. */
  private Reading settled() throws IOException {
    long warmth = 0;
    long damp = 0;
    Reading first = probe.read();
    for (int i = 0; i < READINGS; i++) {
      pause.millis(PAUSE_MILLIS);
      Reading next = probe.read();
      boolean isMoving =
          Math.abs(next.temperatureMilliC() - first.temperatureMilliC()) > SETTLED_MILLI_C
              || Math.abs(next.humidityMilliPct() - first.humidityMilliPct()) > SETTLED_MILLI_PCT;
      if (isMoving) {
        throw new IOException("probe " + probe.name() + " has not settled; wait longer");
      }
      warmth += next.temperatureMilliC();
      damp += next.humidityMilliPct();
    }
    return new Reading(mean(warmth), first.hasHumidity() ? mean(damp) : first.humidityMilliPct());
  }

  private static int mean(long sum) {
    return Math.toIntExact(Math.round((double) sum / READINGS));
  }

  private IOException tooFarOff(int off, String unit) {
    return new IOException(
        "probe "
            + probe.name()
            + " is off by "
            + off / 1000.0
            + " "
            + unit
            + ": it is broken or in the wrong place, and no number makes that good");
  }
}
