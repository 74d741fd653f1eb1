package rindward.controller.tasting.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import rindward.controller.keeping.PValue;

/**
 * How often ranks handed out by chance would set the samples as far apart as this panel did.
 *
 * @param basis how the arrangements were found
 * @param asFar arrangements at least as far apart, the panel's own among them
 * @param all all arrangements that were looked at
 */
public record PermutationP(Basis basis, long asFar, long all) {
  private static final long MOST_SHOWN = 1_000_000_000;
  private static final double LEAST_SHOWN = 0.0001;

  /** Which arrangements were looked at. */
  public enum Basis {
    /** Every distinct arrangement of every panelist's mid-ranks, one panelist held. */
    EXACT,
    /** The panel's own and a fixed number drawn at random (Phipson and Smyth 2010). */
    SIMULATED
  }

  /** Returns the chance. */
  public PValue p() {
    return new PValue((double) asFar / all);
  }

  /** Returns how far the chance may be off for having been drawn; zero if it was counted. */
  public double standardError() {
    double p = p().value();
    return basis == Basis.EXACT ? 0 : Math.sqrt(p * (1 - p) / all);
  }

  /** Returns the chance and what it was counted from, as part of a sentence. */
  public String words() {
    return switch (basis) {
      case EXACT ->
          all > MOST_SHOWN
              ? "exact p " + threeDigits() + ": every arrangement of the mid-ranks counted"
              : String.format(
                  Locale.ROOT,
                  "exact p %s: %s of %s arrangements of the mid-ranks, one panelist held",
                  threeDigits(),
                  grouped(asFar),
                  grouped(all));
      case SIMULATED ->
          String.format(
              Locale.ROOT,
              "p %s, give or take %.4f, by %s random arrangements",
              threeDigits(),
              standardError(),
              grouped(all - 1));
    };
  }

  /** A chance with the digits that matter; one too small to matter is called that. */
  private String threeDigits() {
    double p = p().value();
    return p < LEAST_SHOWN
        ? "below 0.0001"
        : new BigDecimal(p).round(new MathContext(3)).toPlainString();
  }

  private static String grouped(long number) {
    return String.format(Locale.ROOT, number < 10_000 ? "%d" : "%,d", number);
  }
}
