package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * Without a temperature that can be trusted, everything is off: that is the fail-safe. A room that
 * rests is off as well.
 */
final class NothingKnown implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    Because because;
    if (!situation.picture().hasTemperature()) {
      because = Because.NO_READING;
    } else if (situation.order().range() == null) {
      because = Because.RESTS;
    } else {
      return;
    }
    for (OutputKind kind : situation.room().outputs().keySet()) {
      wishes.off(kind, Right.HARDWARE_LIMIT, Reason.of(because));
    }
  }
}
