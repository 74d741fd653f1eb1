package rindward.hardware.air;

/** The one sentence that every equation of this package refuses a value outside its range with. */
final class Bounds {
  private Bounds() {}

  /** Returns {@code value} if it lies in {@code low..high}; refuses it, or a NaN, otherwise. */
  static double require(String name, double value, double low, double high, String unit) {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          name
              + " was "
              + plain(value)
              + " but it must lie in "
              + plain(low)
              + ".."
              + plain(high)
              + unit);
    }
    return value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
