package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What may be said of samples that were not tasted in one go. Only the check was in every go, so
 * only the distance from it can be compared, and that roughly: there is no test across goes.
 */
final class AcrossFlights {
  /** So far apart, and the panel's scale is another one in the second go. Common practice. */
  private static final double SHIFTED = 1;

  private AcrossFlights() {}

  /**
   * Returns the sentences; none if all was tasted in one go.
   *
   * @param results of one attribute, one a go
   */
  static List<String> of(List<FlightResult> results, Optional<String> check) {
    if (results.size() < 2) {
      return List.of();
    }
    List<SampleMean> checks =
        results.stream().flatMap(result -> mean(result, check).stream()).toList();
    if (checks.size() < results.size()) {
      return List.of(
          "The goes cannot be compared: the check that they share was not scored, or is left out,"
              + " in one of them.");
    }
    List<String> sentences = new ArrayList<>();
    double low = checks.stream().mapToDouble(SampleMean::mean).min().orElseThrow();
    double high = checks.stream().mapToDouble(SampleMean::mean).max().orElseThrow();
    sentences.add(
        String.format(
            Locale.ROOT,
            "The check %s got %s in the goes in order%s.",
            checks.get(0).sample(),
            String.join(", ", checks.stream().map(m -> points("%.1f", m.mean())).toList()),
            high - low >= SHIFTED
                ? ": the panel shifted, so compare goes with great care"
                : ", so the panel held its scale"));
    List<String> distances = new ArrayList<>();
    for (int go = 0; go < results.size(); go++) {
      for (SampleMean mean : results.get(go).means()) {
        if (!mean.sample().equals(checks.get(go).sample())) {
          distances.add(mean.sample() + points(" %+.1f", mean.mean() - checks.get(go).mean()));
        }
      }
    }
    sentences.add(
        "Beside the check of its own go: "
            + String.join(", ", distances)
            + "; across goes nothing is tested.");
    return sentences;
  }

  private static Optional<SampleMean> mean(FlightResult result, Optional<String> check) {
    return result.means().stream()
        .filter(m -> check.filter(m.sample()::equals).isPresent())
        .findFirst();
  }

  private static String points(String format, double points) {
    return String.format(Locale.ROOT, format, points);
  }
}
