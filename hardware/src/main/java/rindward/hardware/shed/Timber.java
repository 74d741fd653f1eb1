package rindward.hardware.shed;

/**
 * Wood, crates and cardboard, which drink vapour when the room is damp and give it back when it is
 * dry.
 *
 * @param kgPerPct water taken up per percent of relative humidity, in kg; zero for none
 * @param kgPerSPa exchange with the air per Pa of difference, in kg/(s Pa)
 */
public record Timber(double kgPerPct, double kgPerSPa) {
  /** A room without any. */
  public static final Timber NONE = new Timber(0, 0);
}
