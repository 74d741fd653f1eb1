package rindward.controller.journal;

import java.time.Instant;

/**
 * Evidence of how ripe fruits were when they were picked.
 *
 * @param lowDays least days after fruit set at picking
 * @param highDays most days after fruit set at picking
 * @param fruits in how many fruits it was seen; 0 if it holds for the whole lot
 */
public record RipenessNoted(
    String lot, RipenessSign sign, int lowDays, int highDays, int fruits, Instant at)
    implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.ripenessNoted(this);
  }
}
