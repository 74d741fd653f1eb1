package rindward.controller.crop;

/**
 * Aging that grows by the same factor with every ten degrees: Q10^((T - Tref)/10) (Saltveit,
 * Respiratory metabolism, USDA Handbook 66). Not valid where cold does harm, nor for crops that
 * sprout fastest in between.
 *
 * @param q10 the factor, in thousandths; at least 1000
 * @param reference temperature in thousandths of a degree C where the rate is 1000
 */
public record Q10Aging(Cited<Integer> q10, Cited<Integer> reference) implements Aging {
  public Q10Aging {
    if (q10.value() < REFERENCE) {
      throw new IllegalArgumentException("Q10 was " + q10.value() + " but it must be 1000 or more");
    }
  }

  /** {@inheritDoc} Takes a power: ask once for a temperature that comes again and again. */
  @Override
  public int rate(int temperatureMilliC) {
    double tens = (temperatureMilliC - reference.value()) / 10_000.0;
    return Math.toIntExact(Math.round(REFERENCE * StrictMath.pow(q10.value() / 1000.0, tens)));
  }
}
