package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.hardware.OutputKind;

/**
 * A room gets its own volume of fresh air a day, in the kindest hours: when outdoors is nearest to
 * what the room wants. What is overdue for two days no longer waits for a kind hour.
 */
final class FreshAirRule implements Rule {
  private static final double OVERDUE_VOLUMES = 1.5;
  private static final double WORTH_STARTING = 0.3;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir() || !input.room().has(OutputKind.EXHAUST)) {
      return;
    }
    double due = input.memory().freshDue();
    boolean isOn = input.isOn(OutputKind.EXHAUST);
    boolean isDue = due > (isOn ? 0 : WORTH_STARTING) && (isKindHour(input) || isOn);
    if (isDue || due > OVERDUE_VOLUMES) {
      requests.on(OutputKind.EXHAUST, Precedence.DRY, Reason.of(ReasonCode.FRESH_AIR));
    }
  }

  /** The warm part of a day when outdoors is colder than the room, the cold part when warmer. */
  private static boolean isKindHour(ControlInput input) {
    OutdoorEstimate outdoor = input.outdoor();
    if (!outdoor.isKnown()) {
      return true;
    }
    double span = outdoor.lastWarmestC() - outdoor.lastColdestC();
    boolean colder = outdoor.meanC() < input.air().slowC();
    return colder
        ? outdoor.nowC() >= outdoor.lastWarmestC() - span / 4
        : outdoor.nowC() <= outdoor.lastColdestC() + span / 4;
  }
}
