package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.SetpointBand;
import rindward.hardware.OutputKind;

/**
 * Airs a room that is too warm with colder outdoor air, and in warm weather goes on at night down
 * to the lower edge, so that the day begins cool. Judged by the slow temperature, and only when
 * nothing was heated for two hours: a pulse of the heater is no reason to air.
 */
final class CoolingRule implements Rule {
  private static final double NO_HEAT_SECONDS = 2 * 3600;
  private static final int WORTH_AIRING = 1_500;
  private static final int BELOW_UPPER = 500;
  private static final int HYSTERESIS = 500;

  /** How far above its lower edge a room is cooled at night when a warm day is to come. */
  private static final int ABOVE_EDGE = 800;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir()) {
      return;
    }
    SetpointBand target = input.target();
    int slow = Math.min(input.slowMilliC(), input.airMilliC());
    boolean isWarmAhead =
        input.outdoor().isKnown()
            && Math.round(input.outdoor().expectedWarmestC() * 1000) > target.ceiling() - 1_000;
    int start = isWarmAhead ? target.floor() + 2 * ABOVE_EDGE : target.ceiling() - BELOW_UPPER;
    int stop = isWarmAhead ? target.floor() + ABOVE_EDGE : start - HYSTERESIS;
    double heatedSeconds = (input.now().nanos() - input.memory().heater().heatedNanos()) / 1e9;
    boolean isColder = input.outdoor().isKnown() && input.outdoorMilliC() < slow - WORTH_AIRING;
    boolean airs =
        isColder
            && heatedSeconds >= NO_HEAT_SECONDS
            && slow > (input.isOn(OutputKind.EXHAUST) ? stop : start);
    if (airs) {
      requests.on(
          OutputKind.EXHAUST,
          Precedence.ECONOMY,
          new Reason(
              isWarmAhead ? ReasonCode.COOLS_FOR_THE_DAY : ReasonCode.COOLS_WITH_OUTDOOR_AIR,
              slow,
              stop));
    } else {
      requests.off(
          OutputKind.EXHAUST,
          Precedence.ECONOMY,
          new Reason(ReasonCode.NO_NEED_TO_AIR, slow, start));
    }
    int coolerStart = target.ceiling() - BELOW_UPPER;
    boolean cools =
        input.slowMilliC() > (input.isOn(OutputKind.COOLER) ? coolerStart - 1_000 : coolerStart);
    if (cools && heatedSeconds >= NO_HEAT_SECONDS) {
      requests.on(
          OutputKind.COOLER, Precedence.ECONOMY, new Reason(ReasonCode.COOLS, slow, coolerStart));
    } else {
      requests.off(
          OutputKind.COOLER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.COOL_ENOUGH, slow, coolerStart));
    }
  }
}
