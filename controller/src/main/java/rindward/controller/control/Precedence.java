package rindward.controller.control;

/**
 * In whose name an output is requested on or off, strongest first. When two requests meet, the
 * stronger right wins; of two equal ones, off.
 */
public enum Precedence {
  /** The outputs must not be switched at all, or nothing is known that would allow it. */
  HARDWARE_LIMIT,
  /** A person has switched it off. */
  MANUAL_OFF,
  FROST,
  OVERHEATING,
  CHILLING,
  CONDENSATION,
  /** A person has switched it on. */
  MANUAL_ON,
  DAMP,
  DRY,
  /** A contact or a compressor must be spared. */
  MINIMUM_TIMES,
  /** Nothing is at stake but comfort and power. */
  ECONOMY;

  /** Tells whether this right goes before the other. */
  boolean isStrongerThan(Precedence other) {
    return compareTo(other) < 0;
  }

  /** Tells whether contacts are spared before this right gets its way. */
  boolean yieldsToMinimumTimes() {
    return compareTo(OVERHEATING) > 0;
  }
}
