package rindward.controller.control;

import java.time.Duration;
import rindward.controller.control.Memory.Switched;
import rindward.controller.room.Output;

/**
 * Spares contacts: an output stays as it is until its minimum time has passed, unless frost or
 * overheating, a person or the fail-safe want it otherwise.
 */
final class MinimumTimes {
  private MinimumTimes() {}

  static Ruling apply(Output output, Switched now, Ruling wished, long nowNanos) {
    if (wished.on() == now.on() || !wished.right().yieldsToMinimumTimes()) {
      return wished;
    }
    Duration minimum = now.on() ? output.minimumOn() : output.minimumOff();
    long leftNanos = minimum.toNanos() - (nowNanos - now.sinceNanos());
    if (leftNanos <= 0) {
      return wished;
    }
    int leftSeconds = Math.toIntExact(leftNanos / 1_000_000_000L + 1);
    return new Ruling(
        now.on(),
        Right.MINIMUM_TIMES,
        new Reason(now.on() ? Because.ON_FOR_NOW : Because.OFF_FOR_NOW, leftSeconds * 1000, 0));
  }
}
