package rindward.hardware.shed;

import java.util.SplittableRandom;

/**
 * The sensing part of a simulated probe: it follows the truth with its time constant and adds its
 * errors when asked. Two probes swapped by a fault swap their sensors.
 *
 * <pre>dx/dt = (truth - x) / tau</pre>
 */
final class ProbeSensor {
  private static final double YEAR_SECONDS = 365.25 * 86400;

  private final ProbeErrors errors;
  private final SplittableRandom random;
  private double temperatureC = Double.NaN;
  private double humidityPct = Double.NaN;
  private double ageSeconds;
  private double lastDtSeconds = Double.NaN;
  private double lastShare;

  ProbeSensor(ProbeErrors errors, long seed) {
    this.errors = errors;
    random = new SplittableRandom(seed);
  }

  void follow(double trueC, double truePct, double dtSeconds) {
    if (Double.isNaN(temperatureC)) {
      temperatureC = trueC;
      humidityPct = truePct;
      return;
    }
    if (dtSeconds != lastDtSeconds) {
      lastDtSeconds = dtSeconds;
      lastShare = errors.lagSeconds() == 0 ? 1 : -Math.expm1(-dtSeconds / errors.lagSeconds());
    }
    temperatureC += lastShare * (trueC - temperatureC);
    humidityPct += lastShare * (truePct - humidityPct);
    ageSeconds += dtSeconds;
  }

  /** Returns the temperature as sensed now, with an extra error that a fault adds. */
  double senseC(double extraC) {
    double noise = errors.noiseC() * random.nextGaussian();
    return step(temperatureC + errors.biasC() + extraC + noise, errors.stepC());
  }

  /** Returns the humidity as sensed now, in 0..100. */
  double sensePct(double extraPct) {
    double drift = errors.driftPctPerYear() * ageSeconds / YEAR_SECONDS;
    double noise = errors.noisePct() * random.nextGaussian();
    double sensed = humidityPct + errors.biasPct() + drift + extraPct + noise;
    return Math.max(0, Math.min(100, step(sensed, errors.stepPct())));
  }

  boolean oneIn(int n) {
    return random.nextInt(n) == 0;
  }

  private static double step(double value, double step) {
    return step == 0 ? value : Math.rint(value / step) * step;
  }
}
