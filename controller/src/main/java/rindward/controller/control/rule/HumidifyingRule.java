package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
import rindward.controller.control.VapourPressureBand;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/** Adds water while the air holds less than it should. */
final class HumidifyingRule implements Rule {
  @Override
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.knowsVapour() || !situation.room().has(OutputKind.HUMIDIFIER)) {
      return;
    }
    VapourPressureBand band = situation.waterBand();
    int water = Thousandths.of(situation.air().vapourPa());
    int damp = situation.picture().humidityMilliPct();
    int start = situation.middleHumidity(band.startPa());
    if (water < Thousandths.of(band.startPa())) {
      wishes.on(
          OutputKind.HUMIDIFIER,
          Precedence.DRY,
          new Reason(ReasonCode.DRIER_THAN_WANTED, damp, start));
    } else if (situation.isOn(OutputKind.HUMIDIFIER) && water < Thousandths.of(band.stopPa())) {
      wishes.on(
          OutputKind.HUMIDIFIER,
          Precedence.DRY,
          new Reason(ReasonCode.STILL_DRY, damp, situation.middleHumidity(band.stopPa())));
    } else {
      wishes.off(
          OutputKind.HUMIDIFIER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.DAMP_ENOUGH, damp, start));
    }
  }
}
