package rindward.controller.journal;

import java.time.Instant;

/** Anything worth remembering. */
public record Noted(String lot, String text, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Noted> KIND =
      EntryKind.of(
          "noted",
          Noted.class,
          Field.lot(),
          Field.text("text").column("note").called("note").notBlank(),
          Field.at());
}
