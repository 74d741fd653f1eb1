package rindward.controller.crop;

/** How fast a crop grows old in storage, against its rate at the reference temperature. */
public interface Aging {
  /** The rate at the reference temperature, in thousandths. */
  int REFERENCE = 1000;

  /**
   * Returns the rate at an air temperature, in thousandths of the rate at the reference
   * temperature. Chilling is not considered; ask {@link Keeping#agingRate}.
   */
  int rate(int temperatureMilliC);
}
