package rindward.controller.control;

import rindward.hardware.OutputKind;

/** Moves the air while the heater or the humidifier runs, so that what they give is shared out. */
final class Circulating implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    boolean isGiving =
        wishes.of(OutputKind.HEATER).on()
            || wishes.of(OutputKind.HUMIDIFIER).on()
            || situation.isOn(OutputKind.HEATER)
            || situation.isOn(OutputKind.HUMIDIFIER);
    if (isGiving) {
      wishes.on(OutputKind.CIRCULATION, Right.ECONOMY, Reason.of(Because.SHARES_OUT));
    } else {
      wishes.off(OutputKind.CIRCULATION, Right.ECONOMY, Reason.of(Because.NOTHING_TO_SHARE));
    }
  }
}
