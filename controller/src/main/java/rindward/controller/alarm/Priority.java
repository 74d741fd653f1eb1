package rindward.controller.alarm;

/** What a kind of alarm asks of the grower, most urgent first. */
public enum Priority {
  /** Somebody has to get up: the stock is lost by morning, or the shed is in danger. */
  WAKE,
  /** It can wait for the morning's digest. */
  DIGEST,
  /** Good to know; asks for nothing, is never an alarm and needs no acknowledgement. */
  NEWS;

  /** Tells whether this asks at least as much as the other. */
  public boolean isAtLeast(Priority other) {
    return compareTo(other) <= 0;
  }
}
