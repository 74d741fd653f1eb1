package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * Without a temperature that can be trusted, everything is off: that is the fail-safe, but for what
 * {@link BlindFrost} was allowed, and for the fan, which first carries away what the heater holds.
 * A room that rests is off as well.
 */
final class NothingKnown implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    Because because;
    if (!situation.picture().hasTemperature()) {
      because = Because.NO_READING;
    } else if (situation.order().range() == null) {
      boolean isEmpty = situation.order().stock().newest() == null;
      because = isEmpty ? Because.RESTS : Because.ASKED_TO_REST;
    } else {
      return;
    }
    boolean mayHeat = BlindFrost.applies(situation);
    for (OutputKind kind : situation.room().outputs().keySet()) {
      boolean isFan = kind == OutputKind.CIRCULATION;
      if (isFan && Circulating.carriesAway(situation)) {
        wishes.on(kind, Right.ECONOMY, Reason.of(Because.CARRIES_AWAY));
      } else if (isFan && situation.memory().suspicion().isSuspected()) {
        continue;
      } else if (!mayHeat || !BlindFrost.concerns(kind)) {
        wishes.off(kind, Right.HARDWARE_LIMIT, Reason.of(because));
      }
    }
  }
}
