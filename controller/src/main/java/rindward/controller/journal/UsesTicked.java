package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import rindward.controller.tasting.Use;

/** A panelist said what the fruit in one cup is good for; said again, the later answer counts. */
public record UsesTicked(String session, String panelist, String code, List<Use> uses, Instant at)
    implements Tasting {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<UsesTicked> KIND =
      EntryKind.of(
              "uses-ticked",
              UsesTicked.class,
              Field.text("session"),
              Field.text("panelist"),
              Field.text("code"),
              Field.words("uses", Use.class),
              Field.at())
          .saidBy(Speaker.PANELIST);

  public UsesTicked {
    uses = List.copyOf(uses);
  }
}
