package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * Keeps the dew point below the skin of the coldest fruit, with a margin. Heat does not raise a dew
 * point, so the heater is never held back for it; water and damp outdoor air are.
 */
final class CondensationRule implements Rule {
  /** How far the dew point must stay below the coldest fruit. */
  private static final int MARGIN = 1_500;

  private static final double CLEARLY_LESS_PA = 80;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsVapour()) {
      return;
    }
    double insidePa = input.air().vapourPa();
    int cap = Thousandths.of(input.air().fruitC()) - MARGIN;
    double capPa = SaturationPressure.overIceOrWaterPa(cap / 1000.0);
    int dewPoint = Thousandths.of(SaturationPressure.temperatureC(Math.max(1, insidePa)));
    OutdoorEstimate outdoor = input.outdoor();
    if (dewPoint > cap) {
      requests.off(
          OutputKind.HUMIDIFIER,
          Precedence.CONDENSATION,
          new Reason(ReasonCode.FRUIT_WOULD_GET_WET, dewPoint, cap + MARGIN));
      if (outdoor.hasHumidity()
          && outdoor.vapourPa() < Math.min(insidePa, capPa) - CLEARLY_LESS_PA) {
        requests.on(
            OutputKind.EXHAUST,
            Precedence.CONDENSATION,
            new Reason(ReasonCode.KEEPS_FRUIT_DRY, dewPoint, cap + MARGIN));
      }
    }
    if (outdoor.hasHumidity() && outdoor.vapourPa() > capPa && outdoor.vapourPa() > insidePa) {
      requests.off(
          OutputKind.EXHAUST,
          Precedence.CONDENSATION,
          new Reason(
              ReasonCode.OUTDOOR_WOULD_WET_FRUIT,
              Thousandths.of(SaturationPressure.temperatureC(outdoor.vapourPa())),
              cap + MARGIN));
    }
  }
}
