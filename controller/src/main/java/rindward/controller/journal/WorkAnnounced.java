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
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<WorkAnnounced> KIND =
      EntryKind.of(
              "work-announced",
              WorkAnnounced.class,
              Field.text("room"),
              Field.time("until"),
              Field.at())
          .where(WorkAnnounced::refusal);

  @Override
  public String subject() {
    return "work " + room;
  }

  private Optional<String> refusal() {
    return until.isAfter(at) ? AlarmAnswered.wrongEnd(until, at) : Optional.empty();
  }
}
