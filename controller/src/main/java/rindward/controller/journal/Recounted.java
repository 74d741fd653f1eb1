package rindward.controller.journal;

import java.time.Instant;

/** Somebody counted: so many sound fruits are there, whatever the books say. */
public record Recounted(String lot, int count, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Recounted> KIND =
      EntryKind.of(
          "recounted",
          Recounted.class,
          Field.lot(),
          Field.whole("count").within(0, Limit.MOST_FRUITS),
          Field.at());
}
