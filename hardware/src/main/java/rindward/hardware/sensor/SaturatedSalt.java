package rindward.hardware.sensor;

/**
 * A salt wetted to a slush, over which still air in a closed jar takes one humidity: what a
 * humidity sensor is compared with where there is no laboratory. Values at 5 to 30 C in steps of 5
 * K after L. Greenspan, Humidity fixed points of binary saturated aqueous solutions, J. Res. NBS
 * 81A, 1977; of these only that of sodium chloride at 25 C was seen in print, the others are from
 * memory and agree with other tables to the tenth that those give.
 */
public enum SaturatedSalt {
  MAGNESIUM_CHLORIDE("magnesium chloride", 33_600, 33_470, 33_300, 33_070, 32_780, 32_440),
  SODIUM_CHLORIDE("table salt (sodium chloride)", 75_650, 75_670, 75_610, 75_470, 75_290, 75_090);

  private static final int COLDEST_MILLI_C = 5_000;
  private static final int STEP_MILLI_C = 5_000;

  private final String words;
  private final int[] milliPct;

  SaturatedSalt(String words, int... milliPct) {
    this.words = words;
    this.milliPct = milliPct;
  }

  /** Returns its name as it stands on a jar. */
  public String words() {
    return words;
  }

  /** Tells whether its humidity is known at a temperature. */
  public static boolean isKnownAt(int temperatureMilliC) {
    return temperatureMilliC >= COLDEST_MILLI_C
        && temperatureMilliC <= COLDEST_MILLI_C + 5 * STEP_MILLI_C;
  }

  /**
   * Returns the humidity over it, thousandths of a percent, straight between the values known.
   *
   * @param temperatureMilliC 5 to 30 C, in thousandths
   */
  public int humidityMilliPct(int temperatureMilliC) {
    int above = temperatureMilliC - COLDEST_MILLI_C;
    int low = Math.min(above / STEP_MILLI_C, milliPct.length - 2);
    int part = above - low * STEP_MILLI_C;
    return milliPct[low]
        + Math.round((float) (milliPct[low + 1] - milliPct[low]) * part / STEP_MILLI_C);
  }
}
