package rindward.controller.control;

import rindward.hardware.OutputKind;

/**
 * When the coldest probe nears the temperature that harms the stock, heat is wanted more than dry
 * air, and nothing may let cold air in. Of two probes that disagree, the colder one is believed.
 */
final class Chilling implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    if (!situation.knowsAir() || !situation.order().stock().mindsCold()) {
      return;
    }
    int doubt = situation.room().accuracy().temperatureMilliC();
    int threshold =
        Math.min(situation.order().stock().chillingMilliC(), situation.target().floor());
    int coldest = Math.min(situation.picture().coldestMilliC(), situation.airMilliC());
    if (coldest >= threshold + doubt) {
      return;
    }
    Reason reason = new Reason(Because.STOCK_WOULD_CHILL, coldest, threshold);
    if (situation.picture().warmestMilliC() <= situation.target().ceiling()) {
      wishes.on(OutputKind.HEATER, Right.CHILLING, reason);
    }
    wishes.off(OutputKind.EXHAUST, Right.CHILLING, reason);
    wishes.off(OutputKind.COOLER, Right.CHILLING, reason);
  }
}
