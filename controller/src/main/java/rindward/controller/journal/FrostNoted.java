package rindward.controller.journal;

import java.time.Instant;

/**
 * Frost touched the fruits, before harvest or since.
 *
 * @param minimumMilliC lowest air temperature in thousandths of a degree C
 * @param minutes how long it froze
 * @param covered whether leaves or a cloth lay over the fruits
 * @param waterSoaked whether the rind looked water-soaked afterwards
 */
public record FrostNoted(
    String lot, int minimumMilliC, int minutes, boolean covered, boolean waterSoaked, Instant at)
    implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.frostNoted(this);
  }
}
