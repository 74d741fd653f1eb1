package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.hardware.OutputKind;

/**
 * Heats from the lower part of the range up to its middle. The distance between the two is the dead
 * band that keeps the heater from hunting.
 */
final class Heating implements Rule {
  /** The heater starts this share of the range's width above its lower limit. */
  private static final int START_SHARE = 5;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.picture().hasTemperature()) {
      return;
    }
    Limits wanted = situation.room().range().temperature();
    int start = wanted.low() + wanted.width() / START_SHARE;
    int stop = wanted.middle();
    int warmth = situation.picture().temperatureMilliC();
    if (warmth < start) {
      wishes.on(
          OutputKind.HEATER,
          Right.ECONOMY,
          new Reason(Because.COLDER_THAN_WANTED, warmth, wanted.low()));
    } else if (warmth < stop && situation.isOn(OutputKind.HEATER)) {
      wishes.on(OutputKind.HEATER, Right.ECONOMY, new Reason(Because.STILL_WARMING, warmth, stop));
    } else {
      wishes.off(OutputKind.HEATER, Right.ECONOMY, new Reason(Because.WARM_ENOUGH, warmth, start));
    }
  }
}
