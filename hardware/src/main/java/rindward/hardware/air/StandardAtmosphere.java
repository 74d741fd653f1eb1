package rindward.hardware.air;

/** Air pressure where no barometer hangs. ASHRAE Fundamentals 2017 ch. 1 eq. 3. */
public final class StandardAtmosphere {
  /** Pressure at sea level, in Pa. */
  public static final double SEA_LEVEL_PA = 101_325;

  /** Lowest altitude that has a standard pressure, in metres. */
  public static final double LOWEST_M = -5000;

  /** Highest altitude that has a standard pressure, in metres. */
  public static final double HIGHEST_M = 11_000;

  private StandardAtmosphere() {}

  /** Returns the standard pressure in Pa at {@code altitudeM} in -5000..11000 m above the sea. */
  public static double pressurePa(double altitudeM) {
    Bounds.require("altitude", altitudeM, LOWEST_M, HIGHEST_M, " m");
    return SEA_LEVEL_PA * Math.pow(1 - 2.25577e-5 * altitudeM, 5.2559);
  }
}
