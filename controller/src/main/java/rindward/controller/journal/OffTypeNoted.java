package rindward.controller.journal;

import java.time.Instant;

/** The fruits are not what their label says: seed that was crossed, or mixed up. */
public record OffTypeNoted(String lot, String text, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<OffTypeNoted> KIND =
      EntryKind.of(
          "off-type",
          OffTypeNoted.class,
          Field.lot(),
          Field.text("text")
              .column("note")
              .called("what was seen")
              .notBlank("say how it differs, such as 'pale rind'"),
          Field.at());
}
