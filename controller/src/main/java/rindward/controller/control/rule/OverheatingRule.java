package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
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
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir()) {
      return;
    }
    int warmest = input.picture().warmestMilliC();
    int upper = input.range().temperature().high();
    if (warmest <= upper) {
      return;
    }
    int coldest = input.picture().coldestMilliC();
    Reason tooWarm =
        warmest - coldest > DISPUTE
            ? new Reason(ReasonCode.PROBES_DISPUTE_HEAT, coldest, warmest)
            : new Reason(ReasonCode.TOO_WARM_TO_HEAT, warmest, upper);
    if (warmest <= upper + FAR_ABOVE) {
      requests.off(OutputKind.HEATER, Precedence.DAMP, tooWarm);
      return;
    }
    requests.off(OutputKind.HEATER, Precedence.OVERHEATING, tooWarm);
    requests.off(OutputKind.DEHUMIDIFIER, Precedence.OVERHEATING, tooWarm);
    if (input.outdoor().isKnown() && input.outdoorMilliC() < input.airMilliC() - WORTH_AIRING) {
      requests.on(
          OutputKind.EXHAUST,
          Precedence.OVERHEATING,
          new Reason(ReasonCode.COOLS_WITH_OUTDOOR_AIR, warmest, upper));
    }
    requests.on(
        OutputKind.COOLER, Precedence.OVERHEATING, new Reason(ReasonCode.COOLS, warmest, upper));
  }
}
