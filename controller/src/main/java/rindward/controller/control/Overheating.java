package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * Far above the range nothing may make heat, and the room is aired if that helps. Heat also stops
 * as soon as any probe says that the upper limit is passed: of two probes that disagree, the warmer
 * one is believed here.
 */
final class Overheating implements Rule {
  private static final int FAR_ABOVE = 2_000;
  private static final int WORTH_AIRING = 1_000;

  /** Probes of one room that differ by more are not telling of the same air (judgement). */
  private static final int DISPUTE = 3_000;

  @Override
  public void consider(Situation situation, Wishes wishes) {
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
            ? new Reason(Because.PROBES_DISPUTE_HEAT, coldest, warmest)
            : new Reason(Because.TOO_WARM_TO_HEAT, warmest, upper);
    if (warmest <= upper + FAR_ABOVE) {
      wishes.off(OutputKind.HEATER, Right.DAMP, tooWarm);
      return;
    }
    wishes.off(OutputKind.HEATER, Right.OVERHEATING, tooWarm);
    wishes.off(OutputKind.DEHUMIDIFIER, Right.OVERHEATING, tooWarm);
    if (situation.outdoor().isKnown()
        && situation.outdoorMilliC() < situation.airMilliC() - WORTH_AIRING) {
      wishes.on(
          OutputKind.EXHAUST,
          Right.OVERHEATING,
          new Reason(Because.COOLS_WITH_OUTDOOR_AIR, warmest, upper));
    }
    wishes.on(OutputKind.COOLER, Right.OVERHEATING, new Reason(Because.COOLS, warmest, upper));
  }
}
