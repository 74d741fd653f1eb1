package rindward.controller.alarm;

/** What can happen to an alarm, in the words of IEC 62682 and ISA-18.2. */
public enum AlarmEvent {
  OCCURS,
  RETURNS_TO_NORMAL,
  /** Returns to normal, but its kind is latching: a person has to reset it. */
  RETURNS_LATCHING,
  ACKNOWLEDGED,
  RESET
}
