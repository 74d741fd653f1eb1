package rindward.dashboard.varieties;

import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * What is decided of a variety.
 *
 * @param crop key of its type
 * @param decision grow-again, try-again or drop
 * @param reason why; for try-again, how
 */
public record DecisionRequest(
    String crop, String variety, String decision, @Nullable String reason) {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_REASON = 500;

  /**
   * @throws IllegalArgumentException naming the field that cannot be
   */
  public DecisionRequest {
    JsonBody.needed(crop, "crop", LONGEST_NAME);
    JsonBody.needed(variety, "variety", LONGEST_NAME);
    JsonBody.needed(decision, "decision", LONGEST_NAME);
    if (reason != null) {
      JsonBody.needed(reason, "reason", LONGEST_REASON);
    }
  }
}
