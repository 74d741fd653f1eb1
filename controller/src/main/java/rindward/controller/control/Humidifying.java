package rindward.controller.control;

import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/** Adds water while the air holds less than it should. */
final class Humidifying implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.knowsVapour() || !situation.room().has(OutputKind.HUMIDIFIER)) {
      return;
    }
    WaterBand band = situation.waterBand();
    int water = Thousandths.of(situation.air().vapourPa());
    int damp = situation.picture().humidityMilliPct();
    int start = situation.middleHumidity(band.startPa());
    if (water < Thousandths.of(band.startPa())) {
      wishes.on(
          OutputKind.HUMIDIFIER, Right.DRY, new Reason(Because.DRIER_THAN_WANTED, damp, start));
    } else if (situation.isOn(OutputKind.HUMIDIFIER) && water < Thousandths.of(band.stopPa())) {
      wishes.on(
          OutputKind.HUMIDIFIER,
          Right.DRY,
          new Reason(Because.STILL_DRY, damp, situation.middleHumidity(band.stopPa())));
    } else {
      wishes.off(
          OutputKind.HUMIDIFIER, Right.ECONOMY, new Reason(Because.DAMP_ENOUGH, damp, start));
    }
  }
}
