package rindward.controller.journal;

import java.time.Instant;

/** The session is over: the codes are opened, and nothing more is scored. */
public record SessionClosed(String session, Instant at) implements Tasting {
  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.closed(this);
  }
}
