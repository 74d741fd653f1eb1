package rindward.controller.settings;

import org.tomlj.TomlArray;
import rindward.controller.crop.Days;
import rindward.controller.crop.Limits;

/** What the numbers of the crop guide may be; the unit of each is said here and nowhere else. */
final class CropKinds {
  /** An air or fruit temperature, degrees C. */
  static final Kind<Integer> TEMPERATURE = Kind.thousandths(-40_000, 60_000);

  /** A range of temperature, degrees C. */
  static final Kind<Limits> TEMPERATURES = Kind.limits(-40_000, 60_000);

  /** A share, percent: relative humidity, weight, soluble solids or dry matter. */
  static final Kind<Integer> PERCENT = Kind.thousandths(0, 100_000);

  /** A range of shares, percent. */
  static final Kind<Limits> PERCENTS = Kind.limits(0, 100_000);

  /** What is left of a rate, 1 for all of it. */
  static final Kind<Integer> FACTOR = Kind.thousandths(0, 1_000);

  /** How many times as fast; for Q10, never slower. */
  static final Kind<Integer> Q10 = Kind.thousandths(1_000, 5_000);

  /** A rate of aging against that at the reference temperature. */
  static final Kind<Integer> RATE = Kind.thousandths(0, 100_000);

  /** One number of days. */
  static final Kind<Integer> DAY = Kind.whole(0, 1_000);

  /** A range of whole days, short end first. */
  static final Kind<Days> DAYS =
      new Kind<>(
          "be two whole numbers of days from 0 to 1000, the lower one first",
          new Days(0, 0),
          value ->
              value instanceof TomlArray array
                      && array.size() == 2
                      && array.get(0) instanceof Long low
                      && array.get(1) instanceof Long high
                      && 0 <= low
                      && low <= high
                      && high <= 1_000
                  ? new Days(low.intValue(), high.intValue())
                  : null);

  /** Days a whole cure takes, in thousandths; {@link #NEVER} where nothing cures. */
  static final Kind<Integer> CURE_DAYS =
      new Kind<>(
          "be a number of days from 0.1 to 365, or \"never\"",
          0,
          value -> "never".equals(value) ? 0 : Kind.thousandths(100, 365_000).read().apply(value));

  /** What {@link #CURE_DAYS} gives where nothing cures. */
  static final int NEVER = 0;

  private CropKinds() {}
}
