package rindward.controller.keeping;

import java.util.Collection;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How often the lots of two groups would lie as far apart if the names of the groups were dealt out
 * among the lots of each season and room: every way counted, or, where there are too many, a fixed
 * number drawn at random (Fisher 1935; Phipson and Smyth 2010 for the draws).
 */
final class LotDeals {
  private static final double MOST_COUNTED = 100_000;
  private static final int DRAWN = 20_000;

  /** Any number does; always the same one makes the answer the same whenever it is asked for. */
  private static final long SEED = 1935;

  /** Sums of the same terms in another order differ in their last bits. */
  private static final double ROUNDING = 1e-9;

  private final List<Beside> strata;
  private final double observed;
  private final double all;
  private final boolean isMirrored;

  /**
   * The lots of one season and room: their scores about their mean, those of the first in front.
   */
  private record Beside(double[] scores, int first) {
    static Beside of(List<LotScore> lots) {
      double mean = lots.stream().mapToDouble(LotScore::score).average().orElseThrow();
      double[] scores =
          java.util.stream.Stream.concat(
                  lots.stream().filter(LotScore::isFirst),
                  lots.stream().filter(lot -> !lot.isFirst()))
              .mapToDouble(lot -> lot.score() - mean)
              .toArray();
      return new Beside(scores, (int) lots.stream().filter(LotScore::isFirst).count());
    }

    double sum() {
      double sum = 0;
      for (int i = 0; i < first; i++) {
        sum += scores[i];
      }
      return sum;
    }

    double deals() {
      double deals = 1;
      for (int i = 1; i <= first; i++) {
        deals = deals * (scores.length - first + i) / i;
      }
      return deals;
    }

    double drawn(SplittableRandom random) {
      for (int i = scores.length - 1; i > 0; i--) {
        int other = random.nextInt(i + 1);
        double score = scores[i];
        scores[i] = scores[other];
        scores[other] = score;
      }
      return sum();
    }
  }

  LotDeals(List<LotScore> lots) {
    Collection<List<LotScore>> beside =
        lots.stream()
            .collect(Collectors.groupingBy(LotScore::beside, TreeMap::new, Collectors.toList()))
            .values();
    this.strata = beside.stream().map(Beside::of).toList();
    this.observed = strata.stream().mapToDouble(Beside::sum).sum();
    this.all = strata.stream().mapToDouble(Beside::deals).reduce(1, (a, b) -> a * b);
    this.isMirrored = strata.stream().allMatch(s -> 2 * s.first() == s.scores().length);
  }

  /** Returns by how much the first group lost more than chance would have it; a sum of scores. */
  double observed() {
    return observed;
  }

  /** Returns the smallest chance there could be: the farthest way, and its mirror image. */
  double least() {
    return Math.min(1, (isMirrored ? 2 : 1) / all);
  }

  /** Returns the chance of lying so far apart, either way. */
  PValue p() {
    return new PValue(all <= MOST_COUNTED ? counted(0, 0) / all : drawn());
  }

  private double counted(int stratum, double sum) {
    if (stratum == strata.size()) {
      return isAsFar(sum) ? 1 : 0;
    }
    Beside beside = strata.get(stratum);
    return chosen(stratum, beside, 0, beside.first(), sum);
  }

  /** Goes through every choice of so many more of the lots from {@code from} on. */
  private double chosen(int stratum, Beside beside, int from, int more, double sum) {
    if (more == 0) {
      return counted(stratum + 1, sum);
    }
    double asFar = 0;
    for (int i = from; i <= beside.scores().length - more; i++) {
      asFar += chosen(stratum, beside, i + 1, more - 1, sum + beside.scores()[i]);
    }
    return asFar;
  }

  private double drawn() {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Beside> dealt =
        strata.stream().map(s -> new Beside(s.scores().clone(), s.first())).toList();
    int asFar = 1;
    for (int i = 0; i < DRAWN; i++) {
      double sum = 0;
      for (Beside beside : dealt) {
        sum += beside.drawn(random);
      }
      asFar += isAsFar(sum) ? 1 : 0;
    }
    return asFar / (DRAWN + 1.0);
  }

  private boolean isAsFar(double sum) {
    return Math.abs(sum) >= Math.abs(observed) - ROUNDING;
  }
}
