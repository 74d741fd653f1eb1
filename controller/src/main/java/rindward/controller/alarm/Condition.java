package rindward.controller.alarm;

import rindward.hardware.Thousandths;

/** What one tick says about one alarm, before any delay. */
public enum Condition {
  PRESENT,
  /** Within the deadband, or not known: it stays as it was. */
  UNDECIDED,
  ABSENT;

  /** Returns present for true and absent for false. */
  static Condition of(boolean isPresent) {
    return isPresent ? PRESENT : ABSENT;
  }

  /**
   * Judges a value against an upper limit: present above it, absent once it is at least the
   * deadband below it. All three in thousandths of the same unit; {@link Thousandths#NONE} for a
   * value or limit that is not known.
   */
  static Condition above(int value, int limit, int deadband) {
    if (value == Thousandths.NONE || limit == Thousandths.NONE) {
      return UNDECIDED;
    }
    if (value > limit) {
      return PRESENT;
    }
    return value <= limit - deadband ? ABSENT : UNDECIDED;
  }

  /** Judges a value against a lower limit, as {@link #above} does against an upper one. */
  static Condition below(int value, int limit, int deadband) {
    if (value == Thousandths.NONE || limit == Thousandths.NONE) {
      return UNDECIDED;
    }
    if (value < limit) {
      return PRESENT;
    }
    return value >= limit + deadband ? ABSENT : UNDECIDED;
  }
}
