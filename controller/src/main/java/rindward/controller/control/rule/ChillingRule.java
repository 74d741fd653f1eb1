package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/**
 * When the coldest probe nears the temperature that harms the stock, heat is wanted more than dry
 * air, and nothing may let cold air in. Of two probes that disagree, the colder one is believed.
 */
final class ChillingRule implements Rule {
  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!input.knowsAir() || !input.demand().stock().mindsCold()) {
      return;
    }
    int doubt = input.room().accuracy().temperatureMilliC();
    int threshold = Math.min(input.demand().stock().chillingMilliC(), input.target().floor());
    int coldest = Math.min(input.picture().coldestMilliC(), input.airMilliC());
    if (coldest >= threshold + doubt) {
      return;
    }
    Reason reason = new Reason(ReasonCode.STOCK_WOULD_CHILL, coldest, threshold);
    if (input.picture().warmestMilliC() <= input.target().ceiling()) {
      requests.on(OutputKind.HEATER, Precedence.CHILLING, reason);
    }
    requests.off(OutputKind.EXHAUST, Precedence.CHILLING, reason);
    requests.off(OutputKind.COOLER, Precedence.CHILLING, reason);
  }
}
