package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
import rindward.hardware.OutputKind;

/**
 * When the coldest probe nears the temperature that harms the stock, heat is wanted more than dry
 * air, and nothing may let cold air in. Of two probes that disagree, the colder one is believed.
 */
final class ChillingRule implements Rule {
  @Override
  public void consider(Situation situation, OutputRequests wishes) {
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
    Reason reason = new Reason(ReasonCode.STOCK_WOULD_CHILL, coldest, threshold);
    if (situation.picture().warmestMilliC() <= situation.target().ceiling()) {
      wishes.on(OutputKind.HEATER, Precedence.CHILLING, reason);
    }
    wishes.off(OutputKind.EXHAUST, Precedence.CHILLING, reason);
    wishes.off(OutputKind.COOLER, Precedence.CHILLING, reason);
  }
}
