package rindward.controller.journal;

import java.time.Instant;

/** So many fruits are set aside for a purpose; replaces what was set aside for it before. */
public record Reserved(String lot, Purpose purpose, int count, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Reserved> KIND =
      EntryKind.of(
          "reserved",
          Reserved.class,
          Field.lot(),
          Field.word("purpose", Purpose.class),
          Field.whole("count").within(0, Limit.MOST_FRUITS),
          Field.at());
}
