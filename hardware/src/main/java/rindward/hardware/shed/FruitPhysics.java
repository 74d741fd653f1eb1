package rindward.hardware.shed;

/**
 * How a kilogram of one kind of fruit exchanges heat and water.
 *
 * @param specificHeatJPerKgK specific heat
 * @param filmWPerKgK conductance between the air and the fruit's outer shell
 * @param coreWPerKgK conductance between shell and core
 * @param shellShare share of the mass that is shell; 1 for a small fruit of one temperature (Biot
 *     number below 0.1)
 * @param transpirationKgPerSPa water lost through the skin per Pa between skin and air, in kg/(s
 *     Pa) per kg: Becker and Fricke 1996, m = k M VPD
 * @param respirationWPerKg heat of respiration at 12.5 C
 * @param q10 factor of respiration per 10 K
 */
public record FruitPhysics(
    double specificHeatJPerKgK,
    double filmWPerKgK,
    double coreWPerKgK,
    double shellShare,
    double transpirationKgPerSPa,
    double respirationWPerKg,
    double q10) {

  /** Temperature at which the heat of respiration is stated, in degrees C. */
  public static final double RESPIRATION_REFERENCE_C = 12.5;

  /**
   * Winter squash in open crates. Specific heat 3.89 kJ/(kg K) (between Siebel 3.78 and Chen 3.91
   * for 87.8 % water); transpiration 27 ng/(kg s Pa), derived from published kabocha losses;
   * respiration 25 W/t at 12.5 C with Q10 2.2. Shell to core from 5 lambda A/R for a sphere of 8
   * cm, lambda 0.5 W/(m K) (from memory); the outer 11 % of the radius is 30 % of the mass.
   */
  public static final FruitPhysics WINTER_SQUASH =
      new FruitPhysics(3890, 0.14, 1.0, 0.3, 27e-12, 0.025, 2.2);

  public FruitPhysics {
    if (!(shellShare > 0 && shellShare <= 1)) {
      throw new IllegalArgumentException(
          "shellShare was " + shellShare + " but it must be above 0 and at most 1");
    }
  }
}
