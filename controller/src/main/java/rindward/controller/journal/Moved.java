package rindward.controller.journal;

import java.time.Instant;

/** A lot went to another place. */
public record Moved(String lot, String place, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Moved> KIND =
      EntryKind.of(
          "moved",
          Moved.class,
          Field.lot(),
          Field.text("place").notBlank("it must name a room or another place"),
          Field.at());
}
