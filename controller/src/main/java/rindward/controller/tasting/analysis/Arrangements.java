package rindward.controller.tasting.analysis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rindward.controller.tasting.design.Draw;

/**
 * How the rank sums of a panel would fall if nobody could tell the samples apart: every panelist's
 * mid-ranks, in every order, equally likely. As the spread of the sums does not depend on which
 * sample has which sum, the sums are kept sorted, and there are few of them: adding one panelist at
 * a time to all sorted sums counts every arrangement without visiting each.
 */
final class Arrangements {
  /** More steps than these would keep a small board busy for longer than a page may take. */
  private static final long MOST_STEPS = 4_000_000;

  /** Dealing out so many scores anew takes as long; the error that is left is told. */
  private static final int MOST_DEALT = 2_000_000;

  private static final int MOST_DRAWN = 50_000;

  /** Any number does; always the same one makes the answer the same whenever it is asked for. */
  private static final long SEED = 1957;

  private Arrangements() {}

  /**
   * Counts the arrangements, exactly where that is quick, else from a fixed number of draws.
   *
   * @param ranks doubled mid-ranks by panelist; at least two panelists
   */
  static PermutationP count(int[][] ranks) {
    return exact(ranks).orElseGet(() -> simulated(ranks));
  }

  /** Counts all arrangements with the first panelist held; empty where they are too many. */
  static Optional<PermutationP> exact(int[][] ranks) {
    int samples = ranks[0].length;
    if (samples > SumCounts.MOST_SAMPLES || 2 * samples * ranks.length > SumCounts.HIGHEST_SUM) {
      return Optional.empty();
    }
    // Who has most arrangements comes last, where they are only compared and not kept.
    List<int[]> others =
        Arrays.stream(ranks).skip(1).sorted(Comparator.comparingLong(RankOrders::count)).toList();
    long all = 1;
    for (int[] other : others) {
      long orders = RankOrders.count(other);
      if (all > Long.MAX_VALUE / orders) {
        return Optional.empty();
      }
      all *= orders;
    }
    SumCounts sums = new SumCounts(samples);
    sums.add(ranks[0].clone(), 1);
    long steps = 0;
    for (int[] other : others.subList(0, others.size() - 1)) {
      steps += sums.size() * RankOrders.count(other) * samples;
      if (steps > MOST_STEPS) {
        return Optional.empty();
      }
      sums = add(sums, RankOrders.all(other), samples);
    }
    int[] lastRanks = others.get(others.size() - 1);
    if (steps + sums.size() * LastPanelist.steps(samples) > MOST_STEPS) {
      return Optional.empty();
    }
    LastPanelist last = new LastPanelist(lastRanks);
    long observed = spread(ranks);
    long[] asFar = {0};
    sums.forEach((before, count) -> asFar[0] += count * last.atLeast(observed, before));
    return Optional.of(new PermutationP(PermutationP.Basis.EXACT, asFar[0], all));
  }

  /** Counts arrangements drawn at random. */
  static PermutationP simulated(int[][] ranks) {
    long observed = spread(ranks);
    int[][] drawn = Arrays.stream(ranks).map(int[]::clone).toArray(int[][]::new);
    Draw draw = new Draw(SEED);
    long asFar = 1;
    int draws = draws(ranks.length * ranks[0].length);
    for (int i = 0; i < draws; i++) {
      for (int[] row : drawn) {
        draw.shuffle(row);
      }
      if (spread(drawn) >= observed) {
        asFar++;
      }
    }
    return new PermutationP(PermutationP.Basis.SIMULATED, asFar, draws + 1L);
  }

  /** Returns how many arrangements of so many scores are drawn. */
  static int draws(int scores) {
    return Math.min(MOST_DRAWN, MOST_DEALT / scores);
  }

  private static SumCounts add(SumCounts sums, int[][] orders, int samples) {
    SumCounts next = new SumCounts(samples);
    int[] after = new int[samples];
    sums.forEach(
        (before, count) -> {
          for (int[] order : orders) {
            for (int i = 0; i < samples; i++) {
              after[i] = before[i] + order[i];
            }
            next.add(after, count);
          }
        });
    return next;
  }

  /** Returns the sum of squared rank sums: Friedman's statistic grows with it and nothing else. */
  private static long spread(int[][] ranks) {
    long squares = 0;
    for (int sample = 0; sample < ranks[0].length; sample++) {
      long sum = 0;
      for (int[] row : ranks) {
        sum += row[sample];
      }
      squares += sum * sum;
    }
    return squares;
  }
}
