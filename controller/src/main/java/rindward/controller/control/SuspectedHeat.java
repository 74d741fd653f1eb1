package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * While a room seems to be heated though its heater is commanded off, its air is kept moving, for a
 * heater in still air overheats, and is let out where outside is cooler.
 */
public final class SuspectedHeat implements Rule {
  private static final int WORTH_AIRING = 1_000;

  @Override
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.memory().heater().suspicion().isSuspected()) {
      return;
    }
    if (!situation.knowsAir()) {
      wishes.on(OutputKind.CIRCULATION, Precedence.OVERHEATING, Reason.of(ReasonCode.MOVES_BLIND));
      return;
    }
    int warmest = situation.picture().warmestMilliC();
    int upper = situation.range().temperature().high();
    wishes.on(
        OutputKind.CIRCULATION,
        Precedence.OVERHEATING,
        new Reason(ReasonCode.MOVES_UNBIDDEN_HEAT, warmest, upper));
    if (situation.outdoor().isKnown()
        && situation.outdoorMilliC() < situation.airMilliC() - WORTH_AIRING) {
      wishes.on(
          OutputKind.EXHAUST,
          Precedence.OVERHEATING,
          new Reason(ReasonCode.AIRS_UNBIDDEN_HEAT, warmest, upper));
    }
  }
}
