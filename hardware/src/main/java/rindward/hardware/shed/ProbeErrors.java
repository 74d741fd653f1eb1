package rindward.hardware.shed;

/**
 * How a simulated probe departs from the truth.
 *
 * @param lagSeconds time constant with which it follows
 * @param biasC constant error of temperature
 * @param biasPct constant error of humidity
 * @param driftPctPerYear growth of the humidity error with time
 * @param noiseC standard deviation of a single reading
 * @param noisePct likewise of humidity
 * @param stepC smallest step it tells apart, 0 for none
 * @param stepPct likewise of humidity
 */
public record ProbeErrors(
    double lagSeconds,
    double biasC,
    double biasPct,
    double driftPctPerYear,
    double noiseC,
    double noisePct,
    double stepC,
    double stepPct) {

  /** A probe that tells the truth at once. */
  public static final ProbeErrors NONE = new ProbeErrors(0, 0, 0, 0, 0, 0, 0, 0);

  /**
   * A decent digital probe in free air without bias; drift 0.5 percent a year as data sheets say.
   */
  public static final ProbeErrors USUAL = new ProbeErrors(60, 0, 0, 0.5, 0.02, 0.1, 0.01, 0.04);

  /** Returns the same with these constant errors. */
  public ProbeErrors withBias(double temperatureC, double humidityPct) {
    return new ProbeErrors(
        lagSeconds, temperatureC, humidityPct, driftPctPerYear, noiseC, noisePct, stepC, stepPct);
  }
}
