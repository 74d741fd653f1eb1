package rindward.hardware;

/**
 * What one probe said once: temperature, and humidity where the probe has it.
 *
 * @param temperatureMilliC air or pulp temperature in thousandths of a degree C
 * @param humidityMilliPct relative humidity in thousandths of a percent, or {@link
 *     Thousandths#NONE} for a probe without humidity
 */
public record Reading(int temperatureMilliC, int humidityMilliPct) {

  /** Rounds both values once, to hundredths, as they enter. Both must be finite. */
  public static Reading of(double temperatureC, double humidityPct) {
    return new Reading(
        Thousandths.ofHundredths(temperatureC), Thousandths.ofHundredths(humidityPct));
  }

  /** Rounds the value of a probe that has no humidity. */
  public static Reading ofTemperature(double temperatureC) {
    return new Reading(Thousandths.ofHundredths(temperatureC), Thousandths.NONE);
  }

  /** Tells whether this reading carries a humidity. */
  public boolean hasHumidity() {
    return humidityMilliPct != Thousandths.NONE;
  }
}
