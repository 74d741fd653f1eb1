package rindward.controller.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * Somebody works in a room for a while: what an open door and a person do to it is no alarm until
 * then.
 *
 * @param until when it ends by itself; not after {@code at} to end it now
 */
public record WorkAnnounced(String room, Instant until, Instant at) implements Entry {
  @Override
  public String subject() {
    return "work " + room;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.workAnnounced(this);
  }

  /** Returns why it cannot last so long; empty if it can. */
  public Optional<String> refusal() {
    return until.isAfter(at) ? AlarmAnswered.wrongEnd(until, at) : Optional.empty();
  }
}
