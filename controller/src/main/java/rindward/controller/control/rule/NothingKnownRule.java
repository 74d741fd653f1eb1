package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/**
 * Without a temperature that can be trusted, everything is off: that is the fail-safe, but for what
 * {@link BlindFrostRule} was allowed, and for the fan, which first carries away what the heater
 * holds. A room that rests is off as well.
 */
final class NothingKnownRule implements Rule {
  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    ReasonCode because;
    if (!input.picture().hasTemperature()) {
      because = ReasonCode.NO_READING;
    } else if (input.demand().range() == null) {
      boolean isEmpty = input.demand().stock().newest() == null;
      because = isEmpty ? ReasonCode.RESTS : ReasonCode.ASKED_TO_REST;
    } else {
      return;
    }
    boolean mayHeat = BlindFrostRule.applies(input);
    for (OutputKind kind : input.room().outputs().keySet()) {
      boolean isFan = kind == OutputKind.CIRCULATION;
      if (isFan && CirculationRule.carriesAway(input)) {
        requests.on(kind, Precedence.ECONOMY, Reason.of(ReasonCode.CARRIES_AWAY));
      } else if (isFan && input.memory().heater().suspicion().isSuspected()) {
        continue;
      } else if (!mayHeat || !BlindFrostRule.concerns(kind)) {
        requests.off(kind, Precedence.HARDWARE_LIMIT, Reason.of(because));
      }
    }
  }
}
