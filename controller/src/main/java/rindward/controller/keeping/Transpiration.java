package rindward.controller.keeping;

import rindward.controller.crop.SpeciesGroup;

/**
 * How readily whole fruit gives its water to dry air, as a range: published coefficients exist for
 * few of these crops. In ng of water per kg of fruit, second and Pa of vapour-pressure deficit.
 *
 * @param low the slowest figure that was found
 * @param high the fastest
 * @param basis where the figures come from, for whoever checks them
 */
public record Transpiration(double low, double high, String basis) {

  /** Returns what is known of a group of crops. */
  public static Transpiration of(SpeciesGroup group) {
    return switch (group) {
      case MAXIMA ->
          new Transpiration(
              5, 38, "worked out from UC Davis kabocha figures and a 42-day C. maxima study");
      case MOSCHATA ->
          new Transpiration(17, 30, "worked out from a first-month loss of calabaza (UPR)");
      case PEPO -> new Transpiration(17, 38, "no figure found; that of the other squashes");
      case SWEET_POTATO ->
          new Transpiration(16, 32, "worked out from 1 to 2 % a month of cured roots");
      case ALLIUM ->
          new Transpiration(60, 60, "ASHRAE, from memory; looks high for well cured bulbs");
      case POTATO ->
          new Transpiration(25, 37, "ASHRAE, from memory, and a five-month store (Idaho)");
    };
  }
}
