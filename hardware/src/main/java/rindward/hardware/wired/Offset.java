package rindward.hardware.wired;

import java.io.IOException;
import java.time.Duration;
import java.util.OptionalInt;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/**
 * What a comparison found a probe to be off by: added to all it says. The humidity is first
 * multiplied, where two points were compared.
 *
 * @param temperatureMilliC thousandths of a degree C, either sign
 * @param humidityMilliPct thousandths of a percent, either sign; the sum stays within 0..100 %
 * @param humidityGainMillionths a million leaves the humidity as it is
 */
public record Offset(int temperatureMilliC, int humidityMilliPct, int humidityGainMillionths) {
  private static final int ONE = 1_000_000;

  /** A probe that is taken at its word. */
  public static final Offset NONE = new Offset(0, 0);

  private static final int WET = 100_000;

  /** What is only added. */
  public Offset(int temperatureMilliC, int humidityMilliPct) {
    this(temperatureMilliC, humidityMilliPct, ONE);
  }

  /** Returns what the probe means by a reading. */
  Reading corrected(Reading said) {
    double temperatureC = Thousandths.toDouble(said.temperatureMilliC() + temperatureMilliC);
    if (!said.hasHumidity()) {
      return Reading.ofTemperature(temperatureC);
    }
    long multiplied = Math.round((double) said.humidityMilliPct() * humidityGainMillionths / ONE);
    int humidity = Math.toIntExact(multiplied) + humidityMilliPct;
    boolean isPossible = said.humidityMilliPct() >= 0 && said.humidityMilliPct() <= WET;
    int within = isPossible ? Math.max(0, Math.min(WET, humidity)) : said.humidityMilliPct();
    return Reading.of(temperatureC, Thousandths.toDouble(within));
  }

  /** Returns a probe that gives corrected values. */
  Probe on(Probe probe) {
    return equals(NONE) ? probe : new Corrected(probe, this);
  }

  private record Corrected(Probe probe, Offset offset) implements Probe {
    @Override
    public String name() {
      return probe.name();
    }

    @Override
    public Reading read() throws IOException {
      return offset.corrected(probe.read());
    }

    @Override
    public Duration age() {
      return probe.age();
    }

    @Override
    public Duration believedFor() {
      return probe.believedFor();
    }

    @Override
    public OptionalInt batteryMilliPct() {
      return probe.batteryMilliPct();
    }
  }
}
