package rindward.controller.journal;

import java.time.Instant;

/** Fruits were lost. The note may be empty. */
public record Culled(String lot, int count, Cause cause, String note, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Culled> KIND =
      EntryKind.of(
          "culled",
          Culled.class,
          Field.lot(),
          Field.whole("count").or(1).within(1, Limit.MOST_FRUITS),
          Field.word("cause", Cause.class),
          Field.text("note"),
          Field.at());
}
