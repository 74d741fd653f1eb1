package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/**
 * Moves the air while the heater or the humidifier gives something, a little longer to carry the
 * last of it away, and a few minutes every hour so that no corner is forgotten.
 */
final class CirculationRule implements Rule {
  private static final double OVERRUN_SECONDS = 300;
  private static final double STIR_EVERY_SECONDS = 3600;
  private static final double STIR_SECONDS = 300;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    boolean isOn = input.isOn(OutputKind.CIRCULATION);
    if (!input.knowsAir()) {
      return;
    }
    if (gives(input, requests, OutputKind.HEATER)
        || gives(input, requests, OutputKind.HUMIDIFIER)) {
      requests.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.SHARES_OUT));
    } else if (carriesAway(input)) {
      requests.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.CARRIES_AWAY));
    } else if (isOn
        ? input.secondsSince(OutputKind.CIRCULATION) < STIR_SECONDS
        : input.secondsSince(OutputKind.CIRCULATION) > STIR_EVERY_SECONDS) {
      requests.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.STIRS));
    } else {
      requests.off(
          OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.NOTHING_TO_SHARE));
    }
  }

  private static boolean gives(ControlInput input, OutputRequests requests, OutputKind kind) {
    return input.room().has(kind) && (requests.of(kind).on() || input.isOn(kind));
  }

  /** Tells whether the fan runs on to carry away what the heater still holds. */
  static boolean carriesAway(ControlInput input) {
    return input.isOn(OutputKind.CIRCULATION) && overruns(input);
  }

  private static boolean overruns(ControlInput input) {
    return (input.now().nanos() - input.memory().heater().heatedNanos()) / 1e9 < OVERRUN_SECONDS;
  }
}
