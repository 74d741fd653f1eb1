package rindward.controller.control;

import rindward.controller.estimate.OutputState;
import rindward.hardware.Thousandths;

/**
 * Whether a room is heated though nobody asked for it, told by its temperature alone: its heater is
 * commanded off, it is above its range, and it went on warming by more than the heater's own warmth
 * can do. A suspicion costs a fan's run, so it comes early; what cuts all heat and wakes a person
 * waits for more ({@code alarm.StuckHeater}). Judgement: 1 K within ten minutes.
 *
 * @param isSuspected whether it is so
 * @param lowestMilliC the lowest that the probes said within ten minutes; {@link Thousandths#NONE}
 *     for nothing yet
 * @param lowestNanos when they said so, monotonic
 */
public record HeatSuspicion(boolean isSuspected, int lowestMilliC, long lowestNanos) {
  public static final HeatSuspicion NONE = new HeatSuspicion(false, Thousandths.NONE, 0);

  private static final int RISE_MILLI_K = 1_000;
  private static final int IN_RANGE_MILLI_K = 500;
  private static final long WINDOW_NANOS = 600_000_000_000L;

  /**
   * So long after it was switched off, what a heater still gives and a probe still hides is over.
   */
  private static final long COOLS_NANOS = 120_000_000_000L;

  /**
   * Takes in a tick. While no probe can be trusted it stays as it was: a fan too much does no harm.
   *
   * @param heater what the heater was commanded, and since when
   * @param saidMilliC what the probes say; {@link Thousandths#NONE} if none can be trusted
   * @param upperMilliC upper limit of what is wanted
   */
  public HeatSuspicion next(OutputState heater, int saidMilliC, int upperMilliC, long nowNanos) {
    if (heater.on()) {
      return NONE;
    }
    if (saidMilliC == Thousandths.NONE) {
      return this;
    }
    boolean isOver = saidMilliC < upperMilliC - IN_RANGE_MILLI_K;
    if (isSuspected) {
      return isOver ? NONE : this;
    }
    boolean isLowest =
        lowestMilliC == Thousandths.NONE
            || saidMilliC <= lowestMilliC
            || nowNanos - lowestNanos > WINDOW_NANOS;
    int lowest = isLowest ? saidMilliC : lowestMilliC;
    boolean goesOn =
        nowNanos - heater.sinceNanos() >= COOLS_NANOS
            && saidMilliC > upperMilliC
            && saidMilliC - lowest >= RISE_MILLI_K;
    return new HeatSuspicion(goesOn, lowest, isLowest ? nowNanos : lowestNanos);
  }
}
