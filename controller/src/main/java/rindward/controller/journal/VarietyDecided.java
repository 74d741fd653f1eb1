package rindward.controller.journal;

import java.time.Instant;

/**
 * The grower decided what becomes of a variety; a later decision stands before an earlier one.
 *
 * @param crop key of its type in the crop guide
 * @param variety the grower's name for it
 * @param reason why, and for {@link Decision#TRY_AGAIN} how; may be empty otherwise
 */
public record VarietyDecided(
    String crop, String variety, Decision decision, String reason, Instant at) implements Entry {
  @Override
  public String subject() {
    return "variety " + crop + " " + variety;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.varietyDecided(this);
  }
}
