package rindward.dashboard.tastings;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * What a taster says of one cup.
 *
 * @param answers scores by question; a question that is missing stays as it was answered
 * @param goodFor uses; null if nothing is said of them
 * @param agoSeconds how long ago it was tasted, for a phone that waited for the network; 0 if null
 */
public record CupRequest(
    String code,
    Map<String, Integer> answers,
    @Nullable List<String> goodFor,
    @Nullable Long agoSeconds) {
  private static final int MOST_ANSWERS = 40;
  private static final long WEEK_SECONDS = 7L * 86_400;

  /**
   * @throws IllegalArgumentException naming the field that cannot be
   */
  public CupRequest {
    JsonBody.needed(code, "code", 10);
    if (answers == null
        || answers.size() > MOST_ANSWERS
        || answers.values().stream().anyMatch(Objects::isNull)) {
      throw new IllegalArgumentException(
          "answers was missing or too long but it must give at most " + MOST_ANSWERS + " scores.");
    }
    if (goodFor != null) {
      if (goodFor.size() > MOST_ANSWERS) {
        throw new IllegalArgumentException("goodFor was too long but it must name uses.");
      }
      goodFor.forEach(use -> JsonBody.needed(use, "goodFor", 40));
      goodFor = List.copyOf(goodFor);
    }
    if (agoSeconds != null && (agoSeconds < 0 || agoSeconds > WEEK_SECONDS)) {
      throw new IllegalArgumentException(
          "agoSeconds was '" + agoSeconds + "' but it must be 0 to " + WEEK_SECONDS + ".");
    }
    answers = Map.copyOf(answers);
  }
}
