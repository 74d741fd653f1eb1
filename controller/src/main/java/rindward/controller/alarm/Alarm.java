package rindward.controller.alarm;

import java.time.Instant;

/**
 * One alarm through its life. Beneath a shelf, a suppression or a repair the life goes on unseen;
 * {@link #state()} is what a person sees. Immutable.
 *
 * @param life one of the standard's states A to F
 * @param condition what it was told, delays applied
 * @param isAnnounced whether somebody has been told of the present occurrence
 * @param shelvedUntilSeconds end of the shelf on the monotonic clock; {@link #NOT_SHELVED} without
 * @param isSuppressed whether its cause has called already, or the grower accepted it
 * @param isOutOfService whether it is being repaired
 */
public record Alarm(
    AlarmState life,
    Delayed condition,
    boolean isAnnounced,
    long shelvedUntilSeconds,
    boolean isSuppressed,
    boolean isOutOfService) {

  /** Stands for no shelf. */
  public static final long NOT_SHELVED = Long.MIN_VALUE;

  /** No shelf lasts longer than a day, so that none is forgotten. */
  public static final long LONGEST_SHELF_SECONDS = 86_400;

  /** An alarm that has never happened. */
  public static final Alarm NEVER =
      new Alarm(AlarmState.NORMAL, Delayed.QUIET, false, NOT_SHELVED, false, false);

  /**
   * Returns an alarm that was over before it was seen and waits to be reset.
   *
   * @param since when it was; its clock counts epoch seconds
   */
  static Alarm latched(Instant since) {
    return new Alarm(
        AlarmState.LATCHED_UNACKNOWLEDGED,
        new Delayed(false, since.getEpochSecond(), false),
        true,
        NOT_SHELVED,
        false,
        false);
  }

  /** Returns the state that a person sees. */
  public AlarmState state() {
    if (isOutOfService) {
      return AlarmState.OUT_OF_SERVICE;
    }
    if (isShelved()) {
      return AlarmState.SHELVED;
    }
    return isSuppressed ? AlarmState.SUPPRESSED : life;
  }

  /** Tells whether it may be called about. */
  boolean isHidden() {
    return isOutOfService || isShelved() || isSuppressed;
  }

  /** Tells whether nothing would be lost by forgetting it. */
  boolean isForgettable() {
    return isQuiet() && !isShelved() && !isOutOfService;
  }

  /** Tells whether its condition is not there, was not lately, and nothing of it is left. */
  boolean isQuiet() {
    return life == AlarmState.NORMAL && !condition.present() && !condition.active();
  }

  /** Tells whether its condition counts, or has gone and waits to be reset; hidden or not. */
  public boolean lasts() {
    return condition.active() || life.isLatched();
  }

  private boolean isShelved() {
    return shelvedUntilSeconds != NOT_SHELVED;
  }

  /** Returns the alarm with its condition brought up to date; what is hidden is left as it is. */
  Alarm sensing(Condition seen, AlarmRow row, long nowSeconds) {
    Delayed next = condition.after(seen, row, nowSeconds);
    if (next.active() == condition.active()) {
      return next == condition ? this : with(life, next, isAnnounced);
    }
    if (next.active()) {
      AlarmState occurred = life.after(AlarmEvent.OCCURS);
      // News asks for nothing, so nobody has to acknowledge it.
      return with(
          row.priority() == Priority.NEWS ? occurred.after(AlarmEvent.ACKNOWLEDGED) : occurred,
          next,
          false);
    }
    if (row.isLatching()) {
      return with(life.after(AlarmEvent.RETURNS_LATCHING), next, isAnnounced);
    }
    // What came and went unseen leaves nothing to acknowledge.
    return with(
        isAnnounced ? life.after(AlarmEvent.RETURNS_TO_NORMAL) : AlarmState.NORMAL,
        next,
        isAnnounced);
  }

  /** Returns the alarm hidden behind its cause, or no longer. Then its on-delay begins anew. */
  Alarm suppressed(boolean isNow, long nowSeconds) {
    if (isNow == isSuppressed) {
      return this;
    }
    boolean startsAnew = !isNow && !isAnnounced && condition.active();
    return new Alarm(
        startsAnew ? AlarmState.NORMAL : life,
        startsAnew ? condition.anew(nowSeconds) : condition,
        isAnnounced,
        shelvedUntilSeconds,
        isNow,
        isOutOfService);
  }

  /** Returns the alarm off its shelf if the shelf has ended. */
  Alarm unshelvedInTime(long nowSeconds) {
    return isShelved() && nowSeconds >= shelvedUntilSeconds ? unshelved() : this;
  }

  /** Returns the alarm as told to somebody, if it has to be and may be. */
  Alarm announced() {
    boolean hasToBe =
        condition.active()
            && !isAnnounced
            && (life == AlarmState.UNACKNOWLEDGED || life == AlarmState.ACKNOWLEDGED);
    return hasToBe && !isHidden() ? with(life, condition, true) : this;
  }

  /** Returns the alarm as seen by a person. */
  Alarm acknowledged() {
    return with(life.after(AlarmEvent.ACKNOWLEDGED), condition, isAnnounced);
  }

  /** Returns the latched alarm as reset by a person. */
  Alarm reset() {
    return with(life.after(AlarmEvent.RESET), condition, isAnnounced);
  }

  /** Returns the alarm on the shelf until a time, at most a day away. */
  Alarm shelved(long untilSeconds, long nowSeconds) {
    return new Alarm(
        life,
        condition,
        isAnnounced,
        Math.min(untilSeconds, nowSeconds + LONGEST_SHELF_SECONDS),
        isSuppressed,
        isOutOfService);
  }

  /**
   * Returns the alarm off its shelf. If it lasts and nobody has acknowledged it, it calls again: a
   * person asked for silence for a time, not for good.
   */
  Alarm unshelved() {
    boolean callsAgain = condition.active() && life == AlarmState.UNACKNOWLEDGED;
    return new Alarm(
        life, condition, isAnnounced && !callsAgain, NOT_SHELVED, isSuppressed, isOutOfService);
  }

  /** Returns the alarm taken out of service or put back. */
  Alarm outOfService(boolean isOut) {
    return new Alarm(life, condition, isAnnounced, shelvedUntilSeconds, isSuppressed, isOut);
  }

  /** Returns the alarm with its times on another clock. */
  public Alarm onClock(long shiftSeconds) {
    return new Alarm(
        life,
        new Delayed(
            condition.present(), condition.sinceSeconds() + shiftSeconds, condition.active()),
        isAnnounced,
        isShelved() ? shelvedUntilSeconds + shiftSeconds : NOT_SHELVED,
        isSuppressed,
        isOutOfService);
  }

  private Alarm with(AlarmState newLife, Delayed newCondition, boolean newAnnounced) {
    return new Alarm(
        newLife, newCondition, newAnnounced, shelvedUntilSeconds, isSuppressed, isOutOfService);
  }
}
