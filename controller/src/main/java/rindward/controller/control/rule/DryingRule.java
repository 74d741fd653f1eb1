package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
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
  public void consider(Situation situation, OutputRequests wishes) {
    if (!situation.knowsVapour()) {
      return;
    }
    VapourPressureBand band = situation.waterBand();
    double insidePa = situation.air().vapourPa();
    OutdoorEstimate outdoor = situation.outdoor();
    int damp = situation.middleHumidity(insidePa);
    int limit = situation.middleHumidity(band.dampPa());
    int stop = situation.middleHumidity(band.dampPa() * (1 - HYSTERESIS));
    boolean holdsLess = outdoor.hasHumidity() && outdoor.vapourPa() < insidePa - CLEARLY_LESS_PA;
    boolean airs = isDamp(band, insidePa, situation.isOn(OutputKind.EXHAUST));
    if (airs && outdoor.hasHumidity() && outdoor.vapourPa() >= insidePa) {
      wishes.off(
          OutputKind.EXHAUST,
          Precedence.DAMP,
          new Reason(ReasonCode.OUTDOOR_HOLDS_MORE, damp, limit));
    }
    boolean isWarmedAlready =
        situation.airMilliC() >= situation.target().start() - NEARLY_WARM_ENOUGH;
    if (airs && holdsLess && isWarmedAlready) {
      wishes.on(
          OutputKind.EXHAUST,
          Precedence.DAMP,
          damp > limit
              ? new Reason(ReasonCode.DRIES_BY_AIRING, damp, limit)
              : new Reason(ReasonCode.STILL_AIRING, damp, stop));
    }
    boolean canAir = holdsLess && situation.room().has(OutputKind.EXHAUST);
    boolean dries = isDamp(band, insidePa, situation.isOn(OutputKind.DEHUMIDIFIER));
    if (dries && isWarmedAlready && !canAir) {
      wishes.on(
          OutputKind.DEHUMIDIFIER,
          Precedence.DAMP,
          damp > limit
              ? new Reason(ReasonCode.DRIES, damp, limit)
              : new Reason(ReasonCode.STILL_DRYING, damp, stop));
    } else {
      wishes.off(
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
