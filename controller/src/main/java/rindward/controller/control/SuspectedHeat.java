package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * While a room seems to be heated though its heater is commanded off, its air is kept moving, for a
 * heater in still air overheats, and is let out where outside is cooler.
 */
public final class SuspectedHeat implements Rule {
  private static final int WORTH_AIRING = 1_000;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.memory().heater().suspicion().isSuspected()) {
      return;
    }
    if (!input.knowsAir()) {
      requests.on(
          OutputKind.CIRCULATION, Precedence.OVERHEATING, Reason.of(ReasonCode.MOVES_BLIND));
      return;
    }
    int warmest = input.picture().warmestMilliC();
    int upper = input.range().temperature().high();
    requests.on(
        OutputKind.CIRCULATION,
        Precedence.OVERHEATING,
        new Reason(ReasonCode.MOVES_UNBIDDEN_HEAT, warmest, upper));
    if (input.outdoor().isKnown() && input.outdoorMilliC() < input.airMilliC() - WORTH_AIRING) {
      requests.on(
          OutputKind.EXHAUST,
          Precedence.OVERHEATING,
          new Reason(ReasonCode.AIRS_UNBIDDEN_HEAT, warmest, upper));
    }
  }
}
