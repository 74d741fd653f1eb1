package rindward.controller.journal;

import java.time.Instant;

/**
 * The owner takes the harm that was found in fruits of a lot for a mistake, or for over: what was
 * said of it until now stops the lot no longer.
 */
public record HarmLifted(String lot, String reason, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<HarmLifted> KIND =
      EntryKind.of(
              "harm-lifted",
              HarmLifted.class,
              Field.lot(),
              Field.text("reason").column("note").notBlank("say why it may be eaten after all"),
              Field.at())
          .saidBy(Speaker.OWNER);
}
