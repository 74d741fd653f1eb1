package rindward.controller.journal;

import java.time.Instant;

/** Somebody saw that the lot has cured, and says how. Told, never counted as measured. */
public record Attested(String lot, String text, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Attested> KIND =
      EntryKind.of(
          "attested",
          Attested.class,
          Field.lot(),
          Field.text("text")
              .column("note")
              .called("what was seen")
              .notBlank("say how it looked, such as 'stem dry'"),
          Field.at());
}
