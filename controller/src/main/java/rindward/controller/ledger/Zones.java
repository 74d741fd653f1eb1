package rindward.controller.ledger;

import java.util.Arrays;
import rindward.controller.crop.Limits;

/**
 * One quantity cut at its limits: at each limit, and at each limit shrunk and widened by the
 * probe's accuracy. Within a zone every value counts alike, so time can be added up by zone and the
 * totals drawn from the zones at the end. Zone 0 means not measured.
 */
final class Zones {
  /** Zones 0 (not measured) to 7. */
  static final int COUNT = 8;

  private static final int LOWEST_MEASURABLE = -1_000_000;

  private final Limits limits;
  private final int accuracy;

  /** Zone z >= 1 holds the values from {@code first[z - 1]} up to {@code first[z] - 1}. */
  private final int[] first;

  Zones(Limits limits, int accuracy) {
    this.limits = limits;
    this.accuracy = accuracy;
    this.first =
        new int[] {
          LOWEST_MEASURABLE,
          limits.low() - accuracy,
          limits.low(),
          limits.low() + accuracy,
          limits.high() - accuracy + 1,
          limits.high() + 1,
          limits.high() + accuracy + 1,
        };
    // A probe coarser than the range is wide has its shrunk limits the wrong way round.
    Arrays.sort(first);
  }

  /** Returns the zone of a value. */
  int of(int value) {
    int zone = 0;
    while (zone < first.length && value >= first[zone]) {
      zone++;
    }
    return zone;
  }

  /** Returns the lowest value of a zone. */
  int low(int zone) {
    return zone == 0 ? Integer.MIN_VALUE : first[zone - 1];
  }

  /** Returns the highest value of a zone. */
  int high(int zone) {
    return zone == first.length ? Integer.MAX_VALUE : first[zone] - 1;
  }

  /** Tells whether this quantity was measured in a zone. */
  static boolean isMeasured(int zone) {
    return zone != 0;
  }

  /** Says by how many of three readings (certain, measured, possible) a zone is inside: 0 to 3. */
  int inside(int zone) {
    int v = low(zone);
    return level(
        v >= limits.low() + accuracy && v <= limits.high() - accuracy,
        limits.contains(v),
        v >= limits.low() - accuracy && v <= limits.high() + accuracy);
  }

  /** Says by how many of three readings a zone is below the lower limit: 0 to 3. */
  int below(int zone) {
    int v = low(zone);
    return level(v < limits.low() - accuracy, v < limits.low(), v < limits.low() + accuracy);
  }

  /** Says by how many of three readings a zone is above the upper limit: 0 to 3. */
  int above(int zone) {
    int v = low(zone);
    return level(v > limits.high() + accuracy, v > limits.high(), v > limits.high() - accuracy);
  }

  private static int level(boolean certain, boolean measured, boolean possible) {
    return (certain ? 1 : 0) + (measured ? 1 : 0) + (possible ? 1 : 0);
  }
}
