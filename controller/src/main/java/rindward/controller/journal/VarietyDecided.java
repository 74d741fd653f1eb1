package rindward.controller.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * The grower decided what becomes of a variety; a later decision stands before an earlier one.
 *
 * @param crop key of its type in the crop guide
 * @param variety the grower's name for it
 * @param reason why, and for {@link Decision#TRY_AGAIN} how; may be empty otherwise
 */
public record VarietyDecided(
    String crop, String variety, Decision decision, String reason, Instant at) implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<VarietyDecided> KIND =
      EntryKind.of(
              "variety-decided",
              VarietyDecided.class,
              Field.crop(),
              Field.text("variety").notBlank(),
              Field.word("decision", Decision.class),
              Field.text("reason"),
              Field.at())
          .saidBy(Speaker.OWNER)
          .where(
              v ->
                  v.decision() == Decision.TRY_AGAIN
                      ? FieldErrors.text("reason", v.reason(), "say how it is to be tried again")
                      : Optional.empty());

  @Override
  public String subject() {
    return "variety " + crop + " " + variety;
  }
}
