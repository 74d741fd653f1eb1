package rindward.controller.journal;

import java.time.Instant;

/** The entry of this id should never have been said of the session; it stays in the journal. */
public record TakenBack(String session, long entry, Instant at) implements Tasting {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<TakenBack> KIND =
      EntryKind.of(
              "taken-back",
              TakenBack.class,
              Field.text("session"),
              Field.number("entry"),
              Field.at())
          .saidBy(Speaker.OWNER);
}
