package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
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
  public void consider(Situation situation, OutputRequests wishes) {
    if (!applies(situation)) {
      return;
    }
    double blind = blindSeconds(situation);
    double pulse = OF_LEARNED * situation.memory().estimate().duty().share() * ROUND_SECONDS;
    int outdoor = situation.outdoorMilliC();
    if (blind % ROUND_SECONDS >= ROUND_SECONDS - pulse) {
      Reason reason =
          new Reason(
              ReasonCode.HEATS_BLIND, outdoor, Thousandths.of((LONGEST_SECONDS - blind) / 3600));
      wishes.on(OutputKind.HEATER, Precedence.FROST, reason);
      wishes.on(OutputKind.CIRCULATION, Precedence.FROST, reason);
    } else {
      Reason reason = new Reason(ReasonCode.HEATS_BLIND_LATER, outdoor, 0);
      wishes.off(OutputKind.HEATER, Precedence.FROST, reason);
      if (!CirculationRule.carriesAway(situation)) {
        wishes.off(OutputKind.CIRCULATION, Precedence.ECONOMY, reason);
      }
    }
  }

  /** Tells whether the room is to be heated without a probe now. */
  static boolean applies(Situation situation) {
    return !situation.picture().hasTemperature()
        && situation.order().range() != null
        && situation.room().heatTrust().holdsFrostBlind()
        && situation.outdoor().isKnown()
        && situation.outdoorMilliC() < OUTDOOR_MILLI_C
        && blindSeconds(situation) < LONGEST_SECONDS;
  }

  /** Tells whether an output is one that heats, or carries the heat away. */
  static boolean concerns(OutputKind kind) {
    return kind == OutputKind.HEATER || kind == OutputKind.CIRCULATION;
  }

  private static double blindSeconds(Situation situation) {
    return (situation.now().nanos() - situation.memory().estimate().duty().sightNanos()) / 1e9;
  }
}
