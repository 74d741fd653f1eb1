package rindward.hardware;

/**
 * The one rounding. A measured value becomes an integer of thousandths where it enters, and stays
 * one: control, ledger, page and file compare and add the same number, and no {@code double} meets
 * a limit.
 */
public final class Thousandths {
  /**
   * Stands for a value that was not measured. It lies below every value that can be, so a
   * comparison that forgets it errs towards "too low".
   */
  public static final int NONE = Integer.MIN_VALUE / 4;

  private Thousandths() {}

  /** Returns {@code value} in thousandths, halves rounded up; the value must be finite. */
  public static int of(double value) {
    return Math.toIntExact(Math.round(finite(value) * 1000));
  }

  /**
   * Returns {@code value} in thousandths, rounded to hundredths: what a probe says is kept on disk
   * in hundredths, so it is rounded to them before anybody sees it.
   */
  public static int ofHundredths(double value) {
    return Math.toIntExact(Math.round(finite(value) * 100) * 10);
  }

  /**
   * Returns the value that {@code thousandths} stands for; {@link Double#NaN} for {@link #NONE}.
   */
  public static double toDouble(int thousandths) {
    return thousandths == NONE ? Double.NaN : thousandths / 1000.0;
  }

  private static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value was " + value + " but it must be a finite number");
    }
    return value;
  }
}
