package rindward.controller.control;

import rindward.hardware.OutputKind;

/** Without a temperature that can be trusted, everything is off: that is the fail-safe. */
final class NothingKnown implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (situation.picture().hasTemperature()) {
      return;
    }
    for (OutputKind kind : situation.room().outputs().keySet()) {
      wishes.off(kind, Right.HARDWARE_LIMIT, Reason.of(Because.NO_READING));
    }
  }
}
