package rindward.controller.lot;

import java.time.Instant;
import java.util.List;

/**
 * Some fruits that are treated as one.
 *
 * @param code short enough for a paint pen
 * @param crop key of its type in the crop guide
 * @param variety the grower's name for the variety; may be empty
 * @param count fruits, bulbs or roots at harvest
 * @param harvestedAt when it came in
 * @param stays where it has been since, in time order and without gaps; the last one is open
 * @param version id of the last entry about it: what a change to it must name
 */
public record Lot(
    String code,
    String crop,
    String variety,
    int count,
    Instant harvestedAt,
    List<Stay> stays,
    long version) {

  public Lot {
    stays = List.copyOf(stays);
  }

  /** Returns where the lot is now. */
  public String place() {
    return stays.get(stays.size() - 1).place();
  }
}
