package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * Everything off is not safe for a crop in frost. A room that was allowed to, and has lost every
 * probe, is heated in pulses for half the share of time that its heater has run of late, while an
 * outdoor probe says that it freezes, for twelve hours at most. Each half hour begins with the
 * pause, so that a heater is always off for a while when the probes are lost.
 */
final class BlindFrostRule implements Rule {
  private static final int OUTDOOR_MILLI_C = 2_000;
  private static final double LONGEST_SECONDS = 12 * 3600;
  private static final double ROUND_SECONDS = 1800;
  private static final double OF_LEARNED = 0.5;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    if (!applies(input)) {
      return;
    }
    double blind = blindSeconds(input);
    double pulse = OF_LEARNED * input.memory().estimate().duty().share() * ROUND_SECONDS;
    int outdoor = input.outdoorMilliC();
    if (blind % ROUND_SECONDS >= ROUND_SECONDS - pulse) {
      Reason reason =
          new Reason(
              ReasonCode.HEATS_BLIND, outdoor, Thousandths.of((LONGEST_SECONDS - blind) / 3600));
      requests.on(OutputKind.HEATER, Precedence.FROST, reason);
      requests.on(OutputKind.CIRCULATION, Precedence.FROST, reason);
    } else {
      Reason reason = new Reason(ReasonCode.HEATS_BLIND_LATER, outdoor, 0);
      requests.off(OutputKind.HEATER, Precedence.FROST, reason);
      if (!CirculationRule.carriesAway(input)) {
        requests.off(OutputKind.CIRCULATION, Precedence.ECONOMY, reason);
      }
    }
  }

  /** Tells whether the room is to be heated without a probe now. */
  static boolean applies(ControlInput input) {
    return !input.picture().hasTemperature()
        && input.demand().range() != null
        && input.room().heatTrust().holdsFrostBlind()
        && input.outdoor().isKnown()
        && input.outdoorMilliC() < OUTDOOR_MILLI_C
        && blindSeconds(input) < LONGEST_SECONDS;
  }

  /** Tells whether an output is one that heats, or carries the heat away. */
  static boolean concerns(OutputKind kind) {
    return kind == OutputKind.HEATER || kind == OutputKind.CIRCULATION;
  }

  private static double blindSeconds(ControlInput input) {
    return (input.now().nanos() - input.memory().estimate().duty().sightNanos()) / 1e9;
  }
}
