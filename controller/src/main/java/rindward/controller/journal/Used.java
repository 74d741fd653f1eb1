package rindward.controller.journal;

import java.time.Instant;

/** Sound fruits were used; those set aside for the purpose go first. */
public record Used(String lot, int count, Purpose purpose, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Used> KIND =
      EntryKind.of(
          "used",
          Used.class,
          Field.lot(),
          Field.whole("count").or(1).within(1, Limit.MOST_FRUITS),
          Field.word("purpose", Purpose.class),
          Field.at());
}
