package rindward.controller.control;

import java.time.Duration;
import rindward.controller.estimate.OutputState;
import rindward.controller.room.Output;
import rindward.hardware.OutputKind;

/**
 * Spares contacts: an output stays as it is until its minimum time has passed, unless frost or
 * overheating, a person or the fail-safe want it otherwise.
 */
public final class MinimumTimes {
  private MinimumTimes() {}

  public static OutputDecision apply(
      Output output, OutputState now, OutputDecision requested, long nowNanos) {
    if (requested.on() == now.on() || !yields(output, now, requested)) {
      return requested;
    }
    Duration minimum = now.on() ? output.minimumOn() : output.minimumOff();
    long leftNanos = minimum.toNanos() - (nowNanos - now.sinceNanos());
    if (leftNanos <= 0) {
      return requested;
    }
    int leftSeconds = Math.toIntExact(leftNanos / 1_000_000_000L + 1);
    return new OutputDecision(
        now.on(),
        Precedence.MINIMUM_TIMES,
        new Reason(
            now.on() ? ReasonCode.ON_FOR_NOW : ReasonCode.OFF_FOR_NOW, leftSeconds * 1000, 0));
  }

  /** Cold air is cut short when it would harm; a compressor's pause is kept whatever happens. */
  private static boolean yields(Output output, OutputState now, OutputDecision requested) {
    if (output.kind() == OutputKind.COOLER
        && !now.on()
        && requested.right() != Precedence.MANUAL_OFF) {
      return true;
    }
    boolean stopsColdAir = output.kind() == OutputKind.EXHAUST && !requested.on();
    return requested.right().yieldsToMinimumTimes()
        && !(stopsColdAir && requested.right() == Precedence.CHILLING);
  }
}
