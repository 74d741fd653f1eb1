package rindward.controller.journal;

import java.time.Instant;

/** The entry of this id should never have been said of the lot; it stays in the journal. */
public record Withdrawn(String lot, long entry, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Withdrawn> KIND =
      EntryKind.of(
          "withdrawn", Withdrawn.class, Field.lot(), Field.number("entry").notInRow(), Field.at());
}
