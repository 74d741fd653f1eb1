package rindward.controller.journal;

import java.time.Instant;
import rindward.controller.tasting.Attribute;

/** A panelist answered one question about one cup; said again, the later answer counts. */
public record Scored(
    String session, String panelist, String code, Attribute attribute, int value, Instant at)
    implements Tasting {
  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.scored(this);
  }
}
