package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
import rindward.hardware.OutputKind;

/** Near freezing, heat goes before everything but the hardware and a person's word. */
final class FrostRule implements Rule {
  private static final int FROST_MILLI_C = 2_000;

  @Override
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.knowsAir() || situation.picture().coldestMilliC() >= FROST_MILLI_C) {
      return;
    }
    Reason reason =
        new Reason(ReasonCode.NEAR_FREEZING, situation.picture().coldestMilliC(), FROST_MILLI_C);
    wishes.on(OutputKind.HEATER, Precedence.FROST, reason);
    wishes.on(OutputKind.CIRCULATION, Precedence.FROST, reason);
    wishes.off(OutputKind.EXHAUST, Precedence.FROST, reason);
    wishes.off(OutputKind.HUMIDIFIER, Precedence.FROST, reason);
    wishes.off(OutputKind.COOLER, Precedence.FROST, reason);
  }
}
