package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.SetpointBand;
import rindward.controller.estimate.OutputState;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * Keeps the air in the target's band. A mechanical contact heats from the band's lower to its upper
 * end, one tick ahead of the air; a solid-state one gives the share that keeps it at the lower.
 */
final class HeatingRule implements Rule {
  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    Output heater = input.room().outputs().get(OutputKind.HEATER);
    if (!input.knowsAir() || heater == null) {
      return;
    }
    SetpointBand target = input.target();
    int air = input.airMilliC();
    boolean isOn = input.isOn(OutputKind.HEATER);
    boolean heats;
    if (heater.contact() == Contact.SOLID_STATE) {
      heats = input.memory().heater().modulation().on();
    } else {
      heats = isOn ? risen(input) < target.stop() : input.soonMilliC() < target.start();
    }
    if (heats && air < target.start()) {
      requests.on(
          OutputKind.HEATER, Precedence.ECONOMY, new Reason(why(target), air, target.start()));
    } else if (heats) {
      requests.on(
          OutputKind.HEATER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.STILL_WARMING, air, target.stop()));
    } else {
      requests.off(
          OutputKind.HEATER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.WARM_ENOUGH, air, target.start()));
    }
  }

  private static ReasonCode why(SetpointBand target) {
    if (target.isRaised()) {
      return ReasonCode.WARMS_TO_DRY;
    }
    return target.isNarrow() ? ReasonCode.HOLDS_THE_MIDDLE : ReasonCode.COLDER_THAN_WANTED;
  }

  /**
   * Returns where the air will be at the next tick of heating: what the probe shows, or if that is
   * more, what such a run has led to before; a probe is slower than the air by a heater.
   */
  private static int risen(ControlInput input) {
    OutputState heater = input.memory().switched(OutputKind.HEATER);
    int soon = input.soonMilliC();
    if (Double.isNaN(heater.airC())) {
      return soon;
    }
    double seconds = input.secondsSince(OutputKind.HEATER) + input.tickSeconds();
    double riseK = input.memory().estimate().response().riseK(seconds);
    return Math.max(soon, Thousandths.of(heater.airC() + riseK));
  }
}
