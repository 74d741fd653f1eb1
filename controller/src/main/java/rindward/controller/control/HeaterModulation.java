package rindward.controller.control;

/**
 * How much of its heat a solid-state heater gives: a share that follows the error of the air
 * (proportional and integral), turned into whole ticks by carrying what one tick could not give.
 *
 * @param base the share that has kept the room so far, 0..1
 * @param carried what is owed from the ticks before, in ticks
 * @param on whether the present tick heats
 */
public record HeaterModulation(double base, double carried, boolean on) {
  public static final HeaterModulation NONE = new HeaterModulation(0, 0, false);

  private static final double PER_K = 0.25;
  private static final double PER_K_AND_SECOND = PER_K / 900;

  /** Returns the share for a tick in which the air is this much too cold. */
  public HeaterModulation next(double tooColdK, double seconds) {
    double nextBase = between0And1(base + PER_K_AND_SECOND * tooColdK * seconds);
    double owed = carried + between0And1(nextBase + PER_K * tooColdK);
    boolean nextOn = owed >= 0.5;
    return new HeaterModulation(nextBase, nextOn ? owed - 1 : owed, nextOn);
  }

  private static double between0And1(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
