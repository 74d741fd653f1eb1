package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.keeping.Interval;

/**
 * What may be said of samples that were not tasted in one go. Only the check was in every go, so
 * only the distance from it can be compared, and that roughly: there is no test across goes.
 */
final class AcrossFlights {
  /** A panel held its scale if a move of so many points is ruled out. Common practice. */
  private static final double SHIFTED = 1;

  /** No move between two scores of a scale is so large. */
  private static final int UNKNOWN = Integer.MIN_VALUE;

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
    String name = checks.get(0).sample();
    for (int go = 1; go < results.size(); go++) {
      sentences.add(
          moved(name, go + 1, moves(results.get(0).table(), results.get(go).table(), name)));
    }
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

  /** Returns by how much each taster's score of the check rose from one go to another. */
  private static double[] moves(ScoreTable first, ScoreTable second, String check) {
    int before = first.samples().indexOf(check);
    int after = second.samples().indexOf(check);
    return first.panelists().stream()
        .filter(second.panelists()::contains)
        .mapToInt(
            taster -> {
              int was = first.row(first.panelists().indexOf(taster))[before];
              int is = second.row(second.panelists().indexOf(taster))[after];
              return ScoreTable.isTasted(was) && ScoreTable.isTasted(is) ? is - was : UNKNOWN;
            })
        .filter(move -> move != UNKNOWN)
        .asDoubleStream()
        .toArray();
  }

  /** Says how far the panel moved, and that it held only where a point's move would have shown. */
  private static String moved(String check, int go, double[] moves) {
    if (moves.length == 0) {
      return "Nobody tasted "
          + check
          + " both in go 1 and in go "
          + go
          + ", so they cannot be compared.";
    }
    double move = Interval.mean(moves);
    String size =
        String.format(
            Locale.ROOT, "From go 1 to go %d the check %s moved by %+.1f points", go, check, move);
    Optional<Interval> interval = Interval.ofMean(moves);
    if (interval.isEmpty()) {
      return size + " for the one taster of both; whether the panel held its scale cannot be said.";
    }
    double low = interval.get().low();
    double high = interval.get().high();
    String range = String.format(Locale.ROOT, " (95 %%: %+.1f to %+.1f)", low, high);
    if (low > -SHIFTED && high < SHIFTED) {
      return size + range + ": the panel held its scale to within a point.";
    }
    return size
        + range
        + (low <= 0 && high >= 0 ? "; whether the panel held its scale cannot be said" : "")
        + ", so compare each sample with the check of its own go.";
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
