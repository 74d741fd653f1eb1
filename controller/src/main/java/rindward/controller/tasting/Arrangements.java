package rindward.controller.tasting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How the rank sums of a panel would fall if nobody could tell the samples apart: every panelist's
 * mid-ranks, in every order, equally likely. As the spread of the sums does not depend on which
 * sample has which sum, the sums are kept sorted, and there are few of them: adding one panelist at
 * a time to all sorted sums counts every arrangement without visiting each.
 */
final class Arrangements {
  /** A set of sums is packed into one long, a byte for each sample. */
  private static final int MOST_SAMPLES = 8;

  private static final int HIGHEST_SUM = 255;

  /** More steps than these would keep a small board busy for more than a few seconds. */
  private static final long MOST_ADDED = 10_000_000;

  private static final long MOST_COMPARED = 50_000_000;

  private static final int DRAWN = 100_000;

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
    if (samples > MOST_SAMPLES || 2 * samples * ranks.length > HIGHEST_SUM) {
      return Optional.empty();
    }
    // Who has most arrangements comes last, where they are only compared and not kept.
    List<int[][]> others =
        Arrays.stream(ranks)
            .skip(1)
            .map(Arrangements::ordersOf)
            .sorted(Comparator.comparingInt(orders -> orders.length))
            .toList();
    long all = 1;
    for (int[][] orders : others) {
      if (all > Long.MAX_VALUE / orders.length) {
        return Optional.empty();
      }
      all *= orders.length;
    }
    SumCounts sums = new SumCounts();
    sums.add(packed(ranks[0].clone()), 1);
    for (int[][] orders : others.subList(0, others.size() - 1)) {
      if ((long) sums.size() * orders.length > MOST_ADDED) {
        return Optional.empty();
      }
      sums = add(sums, orders, samples);
    }
    int[][] last = others.get(others.size() - 1);
    if ((long) sums.size() * last.length > MOST_COMPARED) {
      return Optional.empty();
    }
    long asFar = atLeast(sums, last, spread(ranks), samples);
    return Optional.of(new PermutationP(PermutationP.Basis.EXACT, asFar, all));
  }

  /** Counts arrangements drawn at random. */
  static PermutationP simulated(int[][] ranks) {
    long observed = spread(ranks);
    int[][] drawn = Arrays.stream(ranks).map(int[]::clone).toArray(int[][]::new);
    Draw draw = new Draw(SEED);
    long asFar = 1;
    for (int i = 0; i < DRAWN; i++) {
      for (int[] row : drawn) {
        draw.shuffle(row);
      }
      if (spread(drawn) >= observed) {
        asFar++;
      }
    }
    return new PermutationP(PermutationP.Basis.SIMULATED, asFar, DRAWN + 1);
  }

  private static SumCounts add(SumCounts sums, int[][] orders, int samples) {
    SumCounts next = new SumCounts();
    int[] before = new int[samples];
    int[] after = new int[samples];
    sums.forEach(
        (key, count) -> {
          unpack(key, before);
          for (int[] order : orders) {
            for (int i = 0; i < samples; i++) {
              after[i] = before[i] + order[i];
            }
            next.add(packed(after), count);
          }
        });
    return next;
  }

  private static long atLeast(SumCounts sums, int[][] orders, long observed, int samples) {
    int[] before = new int[samples];
    long[] asFar = {0};
    sums.forEach(
        (key, count) -> {
          unpack(key, before);
          for (int[] order : orders) {
            long squares = 0;
            for (int i = 0; i < samples; i++) {
              long sum = (long) before[i] + order[i];
              squares += sum * sum;
            }
            if (squares >= observed) {
              asFar[0] += count;
            }
          }
        });
    return asFar[0];
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

  /** Returns every distinct order of a panelist's ranks, in the order of the dictionary. */
  private static int[][] ordersOf(int[] ranks) {
    int[] order = ranks.clone();
    Arrays.sort(order);
    List<int[]> orders = new ArrayList<>();
    do {
      orders.add(order.clone());
    } while (advance(order));
    return orders.toArray(int[][]::new);
  }

  private static boolean advance(int[] order) {
    int pivot = order.length - 2;
    while (pivot >= 0 && order[pivot] >= order[pivot + 1]) {
      pivot--;
    }
    if (pivot < 0) {
      return false;
    }
    int successor = order.length - 1;
    while (order[successor] <= order[pivot]) {
      successor--;
    }
    swap(order, pivot, successor);
    for (int low = pivot + 1, high = order.length - 1; low < high; low++, high--) {
      swap(order, low, high);
    }
    return true;
  }

  private static void swap(int[] values, int i, int j) {
    int value = values[i];
    values[i] = values[j];
    values[j] = value;
  }

  /** Sorts the sums and packs them, the largest highest. */
  private static long packed(int[] sums) {
    for (int i = 1; i < sums.length; i++) {
      int sum = sums[i];
      int j = i;
      while (j > 0 && sums[j - 1] > sum) {
        sums[j] = sums[j - 1];
        j--;
      }
      sums[j] = sum;
    }
    long key = 0;
    for (int i = sums.length - 1; i >= 0; i--) {
      key = key << 8 | sums[i];
    }
    return key;
  }

  private static void unpack(long key, int[] sums) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] = (int) (key >>> 8 * i) & 0xFF;
    }
  }
}
