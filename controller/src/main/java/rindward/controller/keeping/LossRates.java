package rindward.controller.keeping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How fast fruits of a first group are lost against a second (the proportional hazards of Cox 1972,
 * ties by Breslow 1974), with an error that holds though fruits of one lot fail together (Lin and
 * Wei 1989, J. Am. Stat. Assoc. 84: 1074), if there are many lots.
 *
 * @param logRatio natural logarithm of the ratio of the rates
 * @param modelError its standard error if every fruit were a witness of its own
 * @param lotError its standard error with the lot as witness
 */
public record LossRates(double logRatio, double modelError, double lotError) {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int MOST_STEPS = 50;
  private static final double SETTLED = 1e-12;

  /** Beyond this a group has lost nothing, and there is no ratio. */
  private static final double FARTHEST = 15;

  /** Some fruits of one lot and group that fared alike. */
  record Fruits(String lot, boolean isFirst, Fate fate) {}

  /** Compares two groups of lots; empty where one of them lost nothing. */
  static Optional<LossRates> between(List<KeptLot> first, List<KeptLot> second) {
    List<Fruits> fruits = new ArrayList<>();
    int lot = 0;
    for (KeptLot kept : first) {
      String name = "lot " + lot++;
      kept.fates().forEach(fate -> fruits.add(new Fruits(name, true, fate)));
    }
    for (KeptLot kept : second) {
      String name = "lot " + lot++;
      kept.fates().forEach(fate -> fruits.add(new Fruits(name, false, fate)));
    }
    return of(fruits);
  }

  /** The same for fruits of any lots; a lot may have some in either group. */
  static Optional<LossRates> of(List<Fruits> fruits) {
    double logRatio = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      Score score = Score.at(logRatio, fruits);
      if (score.information() <= 0) {
        return Optional.empty();
      }
      double change = score.score() / score.information();
      logRatio += Math.max(-1, Math.min(1, change));
      if (Math.abs(logRatio) > FARTHEST) {
        return Optional.empty();
      }
      if (Math.abs(change) < SETTLED) {
        Score last = Score.at(logRatio, fruits);
        double squares = last.byLot().values().stream().mapToDouble(s -> s * s).sum();
        return Optional.of(
            new LossRates(
                logRatio,
                1 / Math.sqrt(last.information()),
                Math.sqrt(squares) / last.information()));
      }
    }
    return Optional.empty();
  }

  /** Returns the ratio over its error with the lot as witness. */
  double z() {
    return logRatio / lotError;
  }

  /** Returns the chance of so large a ratio, either way, if both lose alike. */
  PValue p() {
    return new PValue(2 * NORMAL.survivalProbability(Math.abs(z())));
  }

  /** Returns the ratio of the rates and its interval of 95 %. */
  public Interval interval() {
    double reach = NORMAL.inverseSurvivalProbability(0.025) * lotError;
    return new Interval(Math.exp(logRatio - reach), Math.exp(logRatio + reach));
  }

  String sentence(String first, String second) {
    return String.format(
        Locale.ROOT,
        "%s loses fruits at %.1f times the rate of %s (%.1f to %.1f).",
        first,
        Math.exp(logRatio),
        second,
        interval().low(),
        interval().high());
  }

  /** The likelihood's slope and curvature at a ratio, and each lot's share in the slope. */
  private record Score(double score, double information, Map<String, Double> byLot) {
    static Score at(double logRatio, List<Fruits> fruits) {
      double ratio = Math.exp(logRatio);
      TreeSet<Integer> days = new TreeSet<>();
      fruits.stream()
          .filter(f -> f.fate().ending().isLoss())
          .forEach(f -> days.add(f.fate().day()));
      double score = 0;
      double information = 0;
      Map<String, Double> byLot = new HashMap<>();
      for (int day : days) {
        double weightFirst = ratio * atRisk(fruits, day, true);
        double weight = weightFirst + atRisk(fruits, day, false);
        double share = weightFirst / weight;
        double lost = 0;
        for (Fruits each : fruits) {
          lost += lostOn(each, day);
        }
        for (Fruits each : fruits) {
          if (each.fate().day() >= day) {
            double expected = lost * each.fate().fruits() * (each.isFirst() ? ratio : 1) / weight;
            double part = (lostOn(each, day) - expected) * ((each.isFirst() ? 1 : 0) - share);
            score += part;
            byLot.merge(each.lot(), part, Double::sum);
          }
        }
        information += lost * share * (1 - share);
      }
      return new Score(score, information, byLot);
    }

    private static double atRisk(List<Fruits> fruits, int day, boolean first) {
      return fruits.stream()
          .filter(f -> f.isFirst() == first && f.fate().day() >= day)
          .mapToInt(f -> f.fate().fruits())
          .sum();
    }

    private static int lostOn(Fruits each, int day) {
      return each.fate().ending().isLoss() && each.fate().day() == day ? each.fate().fruits() : 0;
    }
  }
}
