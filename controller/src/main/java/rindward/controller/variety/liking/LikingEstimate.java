package rindward.controller.variety.liking;

import java.util.List;
import java.util.Optional;

/**
 * What every variety's scores say, all reckoned together. The order of the scores changes nothing.
 */
public final class LikingEstimate {
  private final Optional<LikingModel> model;

  private LikingEstimate(Optional<LikingModel> model) {
    this.model = model;
  }

  /**
   * Reckons.
   *
   * @param scores all that were given to one question, over all years; may be empty
   */
  public static LikingEstimate of(List<TasteScore> scores) {
    return new LikingEstimate(
        scores.isEmpty() ? Optional.empty() : Optional.of(new LikingModel(scores)));
  }

  /**
   * Returns how a variety stands; empty if nobody scored it.
   *
   * @param check the variety of its type that it is to be compared with; empty for none
   */
  public Optional<LikingStanding> of(String type, String variety, Optional<String> check) {
    return model.flatMap(m -> m.standing(type, variety, check));
  }

  /** Returns how far scores differ for one reason, in points; zero without any score. */
  public double spread(Spread spread) {
    return model.map(m -> m.spread(spread)).orElse(0.0);
  }
}
