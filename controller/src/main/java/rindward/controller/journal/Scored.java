package rindward.controller.journal;

import java.time.Instant;
import rindward.controller.tasting.Attribute;

/** A panelist answered one question about one cup; said again, the later answer counts. */
public record Scored(
    String session, String panelist, String code, Attribute attribute, int value, Instant at)
    implements Tasting {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Scored> KIND =
      EntryKind.of(
              "scored",
              Scored.class,
              Field.text("session"),
              Field.text("panelist"),
              Field.text("code"),
              Field.word("attribute", Attribute.class),
              Field.whole("value"),
              Field.at())
          .saidBy(Speaker.PANELIST);
}
