package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.hardware.OutputKind;

/**
 * Humidifies from the lower part of the range up to its middle, and only in air that is warm
 * enough: in colder air the same water would be damper still once it warms.
 */
final class Humidifying implements Rule {
  /** The humidifier starts this share of the range's width above its lower limit. */
  private static final int START_SHARE = 4;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.picture().hasTemperature() || !situation.picture().hasHumidity()) {
      return;
    }
    Limits wanted = situation.room().range().humidity();
    int start = wanted.low() + wanted.width() / START_SHARE;
    int stop = wanted.middle();
    int damp = situation.picture().humidityMilliPct();
    int warmth = situation.picture().temperatureMilliC();
    int coldest = situation.room().range().temperature().low();
    if (warmth < coldest) {
      wishes.off(
          OutputKind.HUMIDIFIER,
          Right.CONDENSATION,
          new Reason(Because.TOO_COLD_TO_HUMIDIFY, warmth, coldest));
    } else if (damp < start) {
      wishes.on(
          OutputKind.HUMIDIFIER, Right.DRY, new Reason(Because.DRIER_THAN_WANTED, damp, start));
    } else if (damp < stop && situation.isOn(OutputKind.HUMIDIFIER)) {
      wishes.on(OutputKind.HUMIDIFIER, Right.DRY, new Reason(Because.STILL_DRY, damp, stop));
    } else {
      wishes.off(
          OutputKind.HUMIDIFIER, Right.ECONOMY, new Reason(Because.DAMP_ENOUGH, damp, start));
    }
  }
}
