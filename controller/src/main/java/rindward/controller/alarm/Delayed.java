package rindward.controller.alarm;

/**
 * A condition after deadband and delays, as OPC 10000-9 clause 5.8 defines them: it must persist
 * for the on-delay before it counts, and be gone for the off-delay before it counts as gone.
 *
 * @param present whether it holds at this moment, deadband applied
 * @param sinceSeconds when {@code present} last changed, monotonic
 * @param active whether it counts
 */
public record Delayed(boolean present, long sinceSeconds, boolean active) {
  /** Nothing has happened yet. */
  static final Delayed QUIET = new Delayed(false, Long.MIN_VALUE / 2, false);

  /** Returns what follows when {@code condition} is seen at {@code nowSeconds}. */
  Delayed after(Condition condition, AlarmRow row, long nowSeconds) {
    boolean isPresent = condition == Condition.UNDECIDED ? present : condition == Condition.PRESENT;
    long since = isPresent == present ? sinceSeconds : nowSeconds;
    long delay = isPresent ? row.onDelaySeconds() : row.offDelaySeconds();
    boolean isActive = nowSeconds - since >= delay ? isPresent : active;
    return isPresent == present && isActive == active
        ? this
        : new Delayed(isPresent, since, isActive);
  }

  /** Returns the same, its on-delay counted from now: for what was hidden behind its cause. */
  Delayed anew(long nowSeconds) {
    return new Delayed(present, nowSeconds, false);
  }
}
