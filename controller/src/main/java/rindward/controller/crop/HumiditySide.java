package rindward.controller.crop;

/**
 * What happens on one side, dry or damp, of the humidity a cure wants.
 *
 * @param role what this side does
 * @param limit relative humidity in thousandths of a percent where it begins; the limit itself is
 *     still fine
 * @param until relative humidity in thousandths of a percent from which the full effect holds; it
 *     grows in a straight line from {@code limit}. Equal to {@code limit}, the effect is whole just
 *     past it
 * @param factor what is left of the rate at and beyond {@code until}, in thousandths, 0 to 1000
 * @param sentence what a grower is told; one plain sentence
 */
public record HumiditySide(
    HumidityRole role,
    Cited<Integer> limit,
    Cited<Integer> until,
    Cited<Integer> factor,
    String sentence) {
  /** The whole rate, in thousandths. */
  public static final int WHOLE = 1000;

  public HumiditySide {
    boolean right =
        switch (role) {
          case GATE -> factor.value() >= 0 && factor.value() < WHOLE;
          case COST -> factor.value() == WHOLE;
          case HAZARD -> factor.value() == 0;
        };
    if (!right) {
      throw new IllegalArgumentException(
          "factor was "
              + factor.value()
              + " but it must be below 1000 for a gate, 1000 for a cost, 0 for a hazard");
    }
  }

  /** Returns the factor this far past the limit, in thousandths; {@link #WHOLE} at the limit. */
  int factorPast(int past) {
    int width = Math.abs(until.value() - limit.value());
    if (past <= 0) {
      return WHOLE;
    }
    if (past >= width) {
      return factor.value();
    }
    return Math.toIntExact(WHOLE - (long) (WHOLE - factor.value()) * past / width);
  }
}
