package rindward.controller.alarm;

/**
 * The states of an alarm in IEC 62682 and ISA-18.2 (2016, figure "alarm state transition diagram"),
 * with the standard's letters. The last three hide an alarm; its life goes on beneath them.
 */
public enum AlarmState {
  /** A. */
  NORMAL,
  /** B. */
  UNACKNOWLEDGED,
  /** C. */
  ACKNOWLEDGED,
  /** D: returned to normal before anybody acknowledged it. */
  RETURNED_UNACKNOWLEDGED,
  /** E: returned to normal, to be acknowledged and reset. */
  LATCHED_UNACKNOWLEDGED,
  /** F: returned to normal and acknowledged, to be reset. */
  LATCHED_ACKNOWLEDGED,
  /** G: a person wants no word of it, until a stated time. */
  SHELVED,
  /** H: its cause has called already, or the grower accepted it. */
  SUPPRESSED,
  /** I: being repaired, until a person says it is done. */
  OUT_OF_SERVICE;

  /** Returns the state after a happening; the same where the diagram has no such arrow. */
  AlarmState after(AlarmEvent happening) {
    return switch (happening) {
      case OCCURS ->
          this == NORMAL || this == RETURNED_UNACKNOWLEDGED || isLatched() ? UNACKNOWLEDGED : this;
      case RETURNS_TO_NORMAL ->
          this == UNACKNOWLEDGED ? RETURNED_UNACKNOWLEDGED : this == ACKNOWLEDGED ? NORMAL : this;
      case RETURNS_LATCHING ->
          this == UNACKNOWLEDGED
              ? LATCHED_UNACKNOWLEDGED
              : this == ACKNOWLEDGED ? LATCHED_ACKNOWLEDGED : this;
      case ACKNOWLEDGED ->
          switch (this) {
            case UNACKNOWLEDGED -> ACKNOWLEDGED;
            case RETURNED_UNACKNOWLEDGED -> NORMAL;
            case LATCHED_UNACKNOWLEDGED -> LATCHED_ACKNOWLEDGED;
            case NORMAL, ACKNOWLEDGED, LATCHED_ACKNOWLEDGED, SHELVED, SUPPRESSED, OUT_OF_SERVICE ->
                this;
          };
      case RESET ->
          this == LATCHED_UNACKNOWLEDGED
              ? RETURNED_UNACKNOWLEDGED
              : this == LATCHED_ACKNOWLEDGED ? NORMAL : this;
    };
  }

  /** Tells whether a person still has to say that they have seen it. */
  public boolean needsAcknowledgement() {
    return this == UNACKNOWLEDGED
        || this == RETURNED_UNACKNOWLEDGED
        || this == LATCHED_UNACKNOWLEDGED;
  }

  /** Tells whether a person should see it among what is open. */
  public boolean isOpen() {
    return this == ACKNOWLEDGED || needsAcknowledgement() || isLatched();
  }

  /** Tells whether it waits for a person to reset it. */
  boolean isLatched() {
    return this == LATCHED_UNACKNOWLEDGED || this == LATCHED_ACKNOWLEDGED;
  }
}
