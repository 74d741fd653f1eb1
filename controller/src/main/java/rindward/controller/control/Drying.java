package rindward.controller.control;

import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * Damp air is first warmed, which is the target's affair; only when that is not enough is it
 * exchanged for outdoor air that holds clearly less water, and otherwise dried by machine. Nothing
 * is ever exchanged for outdoor air that holds more.
 */
final class Drying implements Rule {
  /** 0.5 g of water a kg of dry air, as vapour pressure at sea level. */
  private static final double CLEARLY_LESS_PA = 80;

  /** Once begun, it goes on until the air holds this share less than the limit. */
  private static final double HYSTERESIS = 0.04;

  private static final int NEARLY_WARM_ENOUGH = 300;

  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.knowsVapour()) {
      return;
    }
    WaterBand band = situation.waterBand();
    double insidePa = situation.air().vapourPa();
    OutdoorTrend outdoor = situation.outdoor();
    int damp = situation.middleHumidity(insidePa);
    int limit = situation.middleHumidity(band.dampPa());
    int stop = situation.middleHumidity(band.dampPa() * (1 - HYSTERESIS));
    boolean holdsLess = outdoor.hasHumidity() && outdoor.vapourPa() < insidePa - CLEARLY_LESS_PA;
    boolean airs = isDamp(band, insidePa, situation.isOn(OutputKind.EXHAUST));
    if (airs && outdoor.hasHumidity() && outdoor.vapourPa() >= insidePa) {
      wishes.off(
          OutputKind.EXHAUST, Right.DAMP, new Reason(Because.OUTDOOR_HOLDS_MORE, damp, limit));
    }
    boolean isWarmedAlready =
        situation.airMilliC() >= situation.target().start() - NEARLY_WARM_ENOUGH;
    if (airs && holdsLess && isWarmedAlready) {
      wishes.on(
          OutputKind.EXHAUST,
          Right.DAMP,
          damp > limit
              ? new Reason(Because.DRIES_BY_AIRING, damp, limit)
              : new Reason(Because.STILL_AIRING, damp, stop));
    }
    boolean canAir = holdsLess && situation.room().has(OutputKind.EXHAUST);
    boolean dries = isDamp(band, insidePa, situation.isOn(OutputKind.DEHUMIDIFIER));
    if (dries && isWarmedAlready && !canAir) {
      wishes.on(
          OutputKind.DEHUMIDIFIER,
          Right.DAMP,
          damp > limit
              ? new Reason(Because.DRIES, damp, limit)
              : new Reason(Because.STILL_DRYING, damp, stop));
    } else {
      wishes.off(
          OutputKind.DEHUMIDIFIER, Right.ECONOMY, new Reason(Because.DRY_ENOUGH, damp, limit));
    }
  }

  private static boolean isDamp(WaterBand band, double insidePa, boolean isDrying) {
    double limitPa = isDrying ? band.dampPa() * (1 - HYSTERESIS) : band.dampPa();
    return Thousandths.of(insidePa) > Thousandths.of(limitPa);
  }
}
