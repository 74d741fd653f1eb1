package rindward.controller.keeping;

import java.util.List;
import java.util.Locale;

/**
 * The weight that the dryness of its air should have taken from a lot, to be set beside what the
 * scale says. Only water is counted; what a fruit breathes away is a small part of the whole.
 *
 * @param lowPct percent of the first weight, by the slowest coefficient known
 * @param highPct percent of the first weight, by the fastest
 */
public record ExpectedLoss(double lowPct, double highPct) {

  /** Returns the loss expected of a crop in the air it had. */
  public static ExpectedLoss in(List<AirSpell> air, Transpiration crop) {
    double drying = air.stream().mapToDouble(AirSpell::deficitPaSeconds).sum();
    return new ExpectedLoss(lossPct(crop.low(), drying), lossPct(crop.high(), drying));
  }

  /**
   * Returns percent of weight lost, {@code 100 (1 - exp(-k D))}: each kilogram that is left goes on
   * losing (Becker and Fricke 1996, without their surface terms).
   *
   * @param nanograms coefficient k in ng/(kg s Pa)
   * @param deficitPaSeconds drying D, the deficit summed over time
   */
  static double lossPct(double nanograms, double deficitPaSeconds) {
    return -100 * Math.expm1(-nanograms * 1e-12 * deficitPaSeconds);
  }

  /** Returns one sentence on a measured loss, in percent of the first weight over the same time. */
  public String beside(double measuredPct) {
    String expected =
        String.format(Locale.ROOT, "its air explains %.1f to %.1f %%", lowPct, highPct);
    String lost = String.format(Locale.ROOT, "It lost %.1f %% of its weight and ", measuredPct);
    if (measuredPct > highPct) {
      return lost
          + expected
          + ": look for soft spots, wounds and broken stems, or for a scale that differs.";
    }
    return lost
        + expected
        + (measuredPct < lowPct ? ": it keeps its water well." : ", as it should.");
  }
}
