package rindward.controller.variety.liking;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every variety's scores say, all reckoned together: some hundredths of a second a season. The
 * order of the scores changes nothing. Immutable, and small: it keeps answers, no matrices.
 */
public final class LikingEstimate {
  private final Map<String, Map<String, LikingStanding>> standings;
  private final double[] spreads;

  private LikingEstimate(Map<String, Map<String, LikingStanding>> standings, double[] spreads) {
    this.standings = standings;
    this.spreads = spreads;
  }

  /**
   * Reckons.
   *
   * @param scores all that were given to one question, over all years; may be empty
   * @param checks by type, the variety that the others are to be compared with; types without one
   *     are left out
   */
  public static LikingEstimate of(List<TasteScore> scores, Map<String, String> checks) {
    if (scores.isEmpty()) {
      return new LikingEstimate(Map.of(), new double[Spread.values().length]);
    }
    LikingModel model = new LikingModel(scores, checks);
    return new LikingEstimate(model.standings(), model.spreads());
  }

  /** Returns how a variety stands; empty if nobody scored it. */
  public Optional<LikingStanding> of(String type, String variety) {
    return Optional.ofNullable(standings.getOrDefault(type, Map.of()).get(variety));
  }

  /** Returns how far scores differ for one reason, in points; zero without any score. */
  public double spread(Spread spread) {
    return spreads[spread.place()];
  }
}
