package rindward.controller.command.base;

import rindward.controller.ledger.BoundedTotal;

/** A total in the three readings of {@code --json}. */
public record Three(double measured, double certain, double possible) {
  /** Divides a tally, for example into seconds. */
  public static Three of(BoundedTotal tally, double unit) {
    return new Three(tally.measured() / unit, tally.certain() / unit, tally.possible() / unit);
  }
}
