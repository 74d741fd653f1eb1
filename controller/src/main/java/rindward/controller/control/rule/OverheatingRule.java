package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
import rindward.hardware.OutputKind;

/**
 * Far above the range nothing may make heat, and the room is aired if that helps. Heat also stops
 * as soon as any probe says that the upper limit is passed: of two probes that disagree, the warmer
 * one is believed here.
 */
final class OverheatingRule implements Rule {
  private static final int FAR_ABOVE = 2_000;
  private static final int WORTH_AIRING = 1_000;

  /** Probes of one room that differ by more are not telling of the same air (judgement). */
  private static final int DISPUTE = 3_000;

  @Override
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.knowsAir()) {
      return;
    }
    int warmest = situation.picture().warmestMilliC();
    int upper = situation.range().temperature().high();
    if (warmest <= upper) {
      return;
    }
    int coldest = situation.picture().coldestMilliC();
    Reason tooWarm =
        warmest - coldest > DISPUTE
            ? new Reason(ReasonCode.PROBES_DISPUTE_HEAT, coldest, warmest)
            : new Reason(ReasonCode.TOO_WARM_TO_HEAT, warmest, upper);
    if (warmest <= upper + FAR_ABOVE) {
      wishes.off(OutputKind.HEATER, Precedence.DAMP, tooWarm);
      return;
    }
    wishes.off(OutputKind.HEATER, Precedence.OVERHEATING, tooWarm);
    wishes.off(OutputKind.DEHUMIDIFIER, Precedence.OVERHEATING, tooWarm);
    if (situation.outdoor().isKnown()
        && situation.outdoorMilliC() < situation.airMilliC() - WORTH_AIRING) {
      wishes.on(
          OutputKind.EXHAUST,
          Precedence.OVERHEATING,
          new Reason(ReasonCode.COOLS_WITH_OUTDOOR_AIR, warmest, upper));
    }
    wishes.on(
        OutputKind.COOLER, Precedence.OVERHEATING, new Reason(ReasonCode.COOLS, warmest, upper));
  }
}
