package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.VapourPressureBand;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/** Adds water while the air holds less than it should. */
final class HumidifyingRule implements Rule {
  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsVapour() || !input.room().has(OutputKind.HUMIDIFIER)) {
      return;
    }
    VapourPressureBand band = input.waterBand();
    int water = Thousandths.of(input.air().vapourPa());
    int damp = input.picture().humidityMilliPct();
    int start = input.middleHumidity(band.startPa());
    if (water < Thousandths.of(band.startPa())) {
      requests.on(
          OutputKind.HUMIDIFIER,
          Precedence.DRY,
          new Reason(ReasonCode.DRIER_THAN_WANTED, damp, start));
    } else if (input.isOn(OutputKind.HUMIDIFIER) && water < Thousandths.of(band.stopPa())) {
      requests.on(
          OutputKind.HUMIDIFIER,
          Precedence.DRY,
          new Reason(ReasonCode.STILL_DRY, damp, input.middleHumidity(band.stopPa())));
    } else {
      requests.off(
          OutputKind.HUMIDIFIER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.DAMP_ENOUGH, damp, start));
    }
  }
}
