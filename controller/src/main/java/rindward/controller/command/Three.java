package rindward.controller.command;

import rindward.controller.ledger.Tally;

/** A total in the three readings of {@code --json}. */
record Three(double measured, double certain, double possible) {
  /** Divides a tally, for example into seconds. */
  static Three of(Tally tally, double unit) {
    return new Three(tally.measured() / unit, tally.certain() / unit, tally.possible() / unit);
  }
}
