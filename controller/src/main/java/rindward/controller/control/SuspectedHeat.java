package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * While a room seems to be heated though its heater is commanded off, its air is kept moving, for a
 * heater in still air overheats, and is let out where outside is cooler.
 */
final class SuspectedHeat implements Rule {
  private static final int WORTH_AIRING = 1_000;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.memory().suspicion().isSuspected()) {
      return;
    }
    if (!situation.knowsAir()) {
      wishes.on(OutputKind.CIRCULATION, Right.OVERHEATING, Reason.of(Because.MOVES_BLIND));
      return;
    }
    int warmest = situation.picture().warmestMilliC();
    int upper = situation.range().temperature().high();
    wishes.on(
        OutputKind.CIRCULATION,
        Right.OVERHEATING,
        new Reason(Because.MOVES_UNBIDDEN_HEAT, warmest, upper));
    if (situation.outdoor().isKnown()
        && situation.outdoorMilliC() < situation.airMilliC() - WORTH_AIRING) {
      wishes.on(
          OutputKind.EXHAUST,
          Right.OVERHEATING,
          new Reason(Because.AIRS_UNBIDDEN_HEAT, warmest, upper));
    }
  }
}
