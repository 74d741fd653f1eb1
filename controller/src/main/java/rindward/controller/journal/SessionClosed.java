package rindward.controller.journal;

import java.time.Instant;

/**
 * The session is over: the codes are opened, and nothing more is scored.
 *
 * @param fruitsNotKnown whether it was closed though nobody can say which fruits were in some cups:
 *     these count for this tasting and for no variety
 */
public record SessionClosed(String session, boolean fruitsNotKnown, Instant at) implements Tasting {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<SessionClosed> KIND =
      EntryKind.of(
              "session-closed",
              SessionClosed.class,
              Field.text("session"),
              Field.yes("fruitsNotKnown"),
              Field.at())
          .saidBy(Speaker.OWNER);
}
