package rindward.controller.journal;

import java.time.Instant;

/** The session is over: the codes are opened, and nothing more is scored. */
public record SessionClosed(String session, Instant at) implements Tasting {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<SessionClosed> KIND =
      EntryKind.of("session-closed", SessionClosed.class, Field.text("session"), Field.at())
          .saidBy(Speaker.OWNER);
}
