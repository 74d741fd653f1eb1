package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/** Near freezing, heat goes before everything but the hardware and a person's word. */
final class FrostRule implements Rule {
  private static final int FROST_MILLI_C = 2_000;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir() || input.picture().coldestMilliC() >= FROST_MILLI_C) {
      return;
    }
    Reason reason =
        new Reason(ReasonCode.NEAR_FREEZING, input.picture().coldestMilliC(), FROST_MILLI_C);
    requests.on(OutputKind.HEATER, Precedence.FROST, reason);
    requests.on(OutputKind.CIRCULATION, Precedence.FROST, reason);
    requests.off(OutputKind.EXHAUST, Precedence.FROST, reason);
    requests.off(OutputKind.HUMIDIFIER, Precedence.FROST, reason);
    requests.off(OutputKind.COOLER, Precedence.FROST, reason);
  }
}
