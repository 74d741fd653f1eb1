package rindward.controller.crop;

import java.util.Optional;

/**
 * When the fruit is ripe, in days after its fruit set.
 *
 * @param ripe days after fruit set at which it is ripe
 * @param ripening how an unripe fruit may be ripened off the vine; empty where it never works
 */
public record Maturity(Cited<Days> ripe, Optional<Ripening> ripening) {

  /**
   * Ripening off the vine.
   *
   * @param notBefore least days after fruit set; the low end is doubtful, the high end safe
   * @param temperature air temperature in thousandths of a degree C
   * @param takes days it takes
   */
  public record Ripening(Cited<Days> notBefore, Cited<Limits> temperature, Cited<Days> takes) {}
}
