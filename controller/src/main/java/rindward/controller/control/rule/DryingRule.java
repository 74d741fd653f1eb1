package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.VapourPressureBand;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * Damp air is first warmed, which is the target's affair; only when that is not enough is it
 * exchanged for outdoor air that holds clearly less water, and otherwise dried by machine. Nothing
 * is ever exchanged for outdoor air that holds more.
 */
final class DryingRule implements Rule {
  /** 0.5 g of water a kg of dry air, as vapour pressure at sea level. */
  private static final double CLEARLY_LESS_PA = 80;

  /** Once begun, it goes on until the air holds this share less than the limit. */
  private static final double HYSTERESIS = 0.04;

  private static final int NEARLY_WARM_ENOUGH = 300;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsVapour()) {
      return;
    }
    VapourPressureBand band = input.waterBand();
    double insidePa = input.air().vapourPa();
    OutdoorEstimate outdoor = input.outdoor();
    int damp = input.middleHumidity(insidePa);
    int limit = input.middleHumidity(band.dampPa());
    int stop = input.middleHumidity(band.dampPa() * (1 - HYSTERESIS));
    boolean holdsLess = outdoor.hasHumidity() && outdoor.vapourPa() < insidePa - CLEARLY_LESS_PA;
    boolean airs = isDamp(band, insidePa, input.isOn(OutputKind.EXHAUST));
    if (airs && outdoor.hasHumidity() && outdoor.vapourPa() >= insidePa) {
      requests.off(
          OutputKind.EXHAUST,
          Precedence.DAMP,
          new Reason(ReasonCode.OUTDOOR_HOLDS_MORE, damp, limit));
    }
    boolean isWarmedAlready = input.airMilliC() >= input.target().start() - NEARLY_WARM_ENOUGH;
    if (airs && holdsLess && isWarmedAlready) {
      requests.on(
          OutputKind.EXHAUST,
          Precedence.DAMP,
          damp > limit
              ? new Reason(ReasonCode.DRIES_BY_AIRING, damp, limit)
              : new Reason(ReasonCode.STILL_AIRING, damp, stop));
    }
    boolean canAir = holdsLess && input.room().has(OutputKind.EXHAUST);
    boolean dries = isDamp(band, insidePa, input.isOn(OutputKind.DEHUMIDIFIER));
    if (dries && isWarmedAlready && !canAir) {
      requests.on(
          OutputKind.DEHUMIDIFIER,
          Precedence.DAMP,
          damp > limit
              ? new Reason(ReasonCode.DRIES, damp, limit)
              : new Reason(ReasonCode.STILL_DRYING, damp, stop));
    } else {
      requests.off(
          OutputKind.DEHUMIDIFIER,
          Precedence.ECONOMY,
          new Reason(ReasonCode.DRY_ENOUGH, damp, limit));
    }
  }

  private static boolean isDamp(VapourPressureBand band, double insidePa, boolean isDrying) {
    double limitPa = isDrying ? band.dampPa() * (1 - HYSTERESIS) : band.dampPa();
    return Thousandths.of(insidePa) > Thousandths.of(limitPa);
  }
}
