package rindward.controller.keeping;

import java.util.Locale;

/**
 * The chance of a difference at least as large as the one seen if there were none.
 *
 * @param value 0..1
 */
public record PValue(double value) {
  /** What is rarer than this by chance is called a difference. Common practice. */
  private static final double SIGNIFICANT = 0.05;

  public PValue {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException("p was '" + value + "' but it must lie in 0..1");
    }
  }

  /** Tells whether a difference may be spoken of. */
  public boolean isSignificant() {
    return value <= SIGNIFICANT;
  }

  /** Returns the value as people read it; never "p 0.000". */
  public String words() {
    return value < 0.001 ? "p below 0.001" : String.format(Locale.ROOT, "p %.3f", value);
  }
}
