package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.estimate.OutputState;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * A heater that has run for twenty minutes without the air having risen at all, or without any
 * probe having said anything new, gets a pause: either it gives no heat, or the probe no longer
 * tells, and then it must not go on for ever. While air is let out, and for twenty minutes after,
 * air that does not rise says nothing about the heater: it is judged then only by the hour, which
 * bounds how long heat goes on in vain. A humidifier takes too little heat to excuse it.
 */
final class IneffectiveHeaterRule implements Rule {
  private static final double LONGEST_SECONDS = 20 * 60;
  private static final double LONGEST_UNJUDGED_SECONDS = 60 * 60;
  private static final double PAUSE_SECONDS = 10 * 60;
  private static final int LEAST_RISE = 200;

  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    OutputState heater = input.memory().switched(OutputKind.HEATER);
    if (!input.knowsAir() || Double.isNaN(heater.saidC())) {
      return;
    }
    double seconds = input.secondsSince(OutputKind.HEATER);
    int rise = input.picture().temperatureMilliC() - Thousandths.of(heater.saidC());
    boolean isStill = input.picture().unchangedSeconds() >= LONGEST_SECONDS;
    boolean gaveNothing =
        heater.on()
            && seconds >= LONGEST_SECONDS
            && (isStill || (rise < LEAST_RISE && canBeJudged(input, seconds)));
    boolean pauses = !heater.on() && input.memory().heater().failed() && seconds < PAUSE_SECONDS;
    if (gaveNothing || pauses) {
      requests.off(
          OutputKind.HEATER,
          Precedence.OVERHEATING,
          new Reason(ReasonCode.HEAT_WITHOUT_EFFECT, Thousandths.of(LONGEST_SECONDS / 60), 0));
    }
  }

  private static boolean canBeJudged(ControlInput input, double heatedSeconds) {
    boolean isAired =
        input.isOn(OutputKind.EXHAUST) || input.secondsSince(OutputKind.EXHAUST) < LONGEST_SECONDS;
    return !isAired || heatedSeconds >= LONGEST_UNJUDGED_SECONDS;
  }
}
