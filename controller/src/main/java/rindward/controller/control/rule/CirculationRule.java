package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
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
  public void consider(Situation situation, OutputRequests wishes) {
    boolean isOn = situation.isOn(OutputKind.CIRCULATION);
    if (!situation.knowsAir()) {
      return;
    }
    if (gives(situation, wishes, OutputKind.HEATER)
        || gives(situation, wishes, OutputKind.HUMIDIFIER)) {
      wishes.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.SHARES_OUT));
    } else if (carriesAway(situation)) {
      wishes.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.CARRIES_AWAY));
    } else if (isOn
        ? situation.secondsSince(OutputKind.CIRCULATION) < STIR_SECONDS
        : situation.secondsSince(OutputKind.CIRCULATION) > STIR_EVERY_SECONDS) {
      wishes.on(OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.STIRS));
    } else {
      wishes.off(
          OutputKind.CIRCULATION, Precedence.ECONOMY, Reason.of(ReasonCode.NOTHING_TO_SHARE));
    }
  }

  private static boolean gives(Situation situation, OutputRequests wishes, OutputKind kind) {
    return situation.room().has(kind) && (wishes.of(kind).on() || situation.isOn(kind));
  }

  /** Tells whether the fan runs on to carry away what the heater still holds. */
  static boolean carriesAway(Situation situation) {
    return situation.isOn(OutputKind.CIRCULATION) && overruns(situation);
  }

  private static boolean overruns(Situation situation) {
    return (situation.now().nanos() - situation.memory().heater().heatedNanos()) / 1e9
        < OVERRUN_SECONDS;
  }
}
