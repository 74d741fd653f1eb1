package rindward.controller.alarm;

import java.time.Instant;

/**
 * Heat that stays cut off until somebody who stands beside it says otherwise.
 *
 * @param code what that person reads on the board, six figures; told by no page and no message
 * @param since when the heater was seen to go on
 * @param wrong how often another code was given since this one was drawn
 */
public record LockOut(String code, Instant since, int wrong) {
  /** So many wrong ones, and another code is drawn: nobody finds one by trying. */
  static final int MOST_WRONG = 5;

  public LockOut {
    if (!code.matches("[0-9]{6}")) {
      throw new IllegalArgumentException("code must be six figures");
    }
  }

  /** Tells whether this is the code; spaces and dashes between its figures do not matter. */
  boolean opensBy(String given) {
    return code.equals(given.replaceAll("[ -]", ""));
  }
}
