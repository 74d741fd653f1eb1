package rindward.controller.notice;

/** Why somebody is told. */
public enum NotificationReason {
  /** It has just begun. */
  CALL,
  /** Those before have not answered. */
  NEXT_IN_LINE,
  /** Everybody was called and nobody has answered. */
  REMINDER,
  /** It is over. */
  ALL_CLEAR,
  /** What could wait, once a day. */
  DIGEST
}
