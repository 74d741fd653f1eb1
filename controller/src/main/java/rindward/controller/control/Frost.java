package rindward.controller.control;

import rindward.hardware.OutputKind;

/** Near freezing, heat goes before everything but the hardware and a person's word. */
final class Frost implements Rule {
  private static final int FROST_MILLI_C = 2_000;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.knowsAir() || situation.picture().coldestMilliC() >= FROST_MILLI_C) {
      return;
    }
    Reason reason =
        new Reason(Because.NEAR_FREEZING, situation.picture().coldestMilliC(), FROST_MILLI_C);
    wishes.on(OutputKind.HEATER, Right.FROST, reason);
    wishes.on(OutputKind.CIRCULATION, Right.FROST, reason);
    wishes.off(OutputKind.EXHAUST, Right.FROST, reason);
    wishes.off(OutputKind.HUMIDIFIER, Right.FROST, reason);
    wishes.off(OutputKind.COOLER, Right.FROST, reason);
  }
}
