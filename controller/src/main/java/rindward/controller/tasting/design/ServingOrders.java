package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Which panelist tastes which sample when.
 *
 * @param orders one a panelist; samples are numbered from zero
 */
public record ServingOrders(List<List<Integer>> orders) {
  public ServingOrders {
    orders = orders.stream().map(List::copyOf).toList();
  }

  /**
   * Draws the orders of a panel. Whole sets of Williams orders are used as often as they fit. The
   * panelists left over get part of a set: for an even number of samples any part is as even as can
   * be; for an odd number the most even part is looked for, which orders of another kind might
   * beat.
   *
   * @param samples two to eight
   * @param panelists at least one
   */
  static ServingOrders draw(int samples, int panelists, Draw draw) {
    List<List<Integer>> set = draw.shuffled(WilliamsSquare.orders(samples));
    List<List<Integer>> chosen = new ArrayList<>();
    for (int whole = panelists / set.size(); whole > 0; whole--) {
      chosen.addAll(set);
    }
    int rest = panelists % set.size();
    chosen.addAll(samples % 2 == 0 ? set.subList(0, rest) : mostEven(set, rest));
    List<Integer> names = draw.shuffled(IntStream.range(0, samples).boxed().toList());
    List<List<Integer>> renamed =
        chosen.stream().map(order -> order.stream().map(names::get).toList()).toList();
    return new ServingOrders(draw.shuffled(renamed));
  }

  /** Returns how often each sample stands in each place, by sample, then by place. */
  int[][] places() {
    int[][] counts = new int[samples()][samples()];
    for (List<Integer> order : orders) {
      for (int place = 0; place < order.size(); place++) {
        counts[order.get(place)][place]++;
      }
    }
    return counts;
  }

  /** Returns how often each sample follows each other, by the one before, then by the one after. */
  int[][] followers() {
    int[][] counts = new int[samples()][samples()];
    for (List<Integer> order : orders) {
      for (int place = 1; place < order.size(); place++) {
        counts[order.get(place - 1)][order.get(place)]++;
      }
    }
    return counts;
  }

  /** Tells whether places and followers are all equally frequent. */
  public boolean isBalanced() {
    return placeSpread() == 0 && followerSpread() == 0;
  }

  /** Returns how even the orders are, as one sentence. */
  public String sentence() {
    if (isBalanced()) {
      return "Balanced: every sample comes equally often in every place and after every other.";
    }
    int set = samples() % 2 == 0 ? samples() : 2 * samples();
    return String.format(
        Locale.ROOT,
        "%s of %d samples cannot be balanced, which takes %s or a multiple of that. This is the"
            + " most even choice of Williams orders: the places of a sample differ by up to %d, its"
            + " neighbours by up to %d.",
        tasters(orders.size()),
        samples(),
        tasters(set),
        placeSpread(),
        followerSpread());
  }

  private static String tasters(int count) {
    return count == 1 ? "1 taster" : count + " tasters";
  }

  private int samples() {
    return orders.get(0).size();
  }

  int placeSpread() {
    return spread(Arrays.stream(places()).flatMapToInt(Arrays::stream));
  }

  int followerSpread() {
    int[][] counts = followers();
    return spread(
        IntStream.range(0, samples())
            .flatMap(
                before ->
                    IntStream.range(0, samples())
                        .filter(after -> after != before)
                        .map(after -> counts[before][after])));
  }

  private static int spread(IntStream counts) {
    int[] sorted = counts.sorted().toArray();
    return sorted[sorted.length - 1] - sorted[0];
  }

  /** Tries every part of a set and returns the first with the least imbalance. */
  private static List<List<Integer>> mostEven(List<List<Integer>> set, int size) {
    List<List<Integer>> best = List.of();
    long least = Long.MAX_VALUE;
    for (int part = 0; part < 1 << set.size(); part++) {
      if (Integer.bitCount(part) == size && size > 0) {
        int members = part;
        List<List<Integer>> orders =
            IntStream.range(0, set.size())
                .filter(i -> (members >> i & 1) == 1)
                .mapToObj(set::get)
                .toList();
        long imbalance = new ServingOrders(orders).imbalance();
        if (imbalance < least) {
          least = imbalance;
          best = orders;
        }
      }
    }
    return best;
  }

  /** Returns the sum of all squared counts: as their sum is fixed, least where they are equal. */
  private long imbalance() {
    return squares(places()) + squares(followers());
  }

  private static long squares(int[][] counts) {
    return Arrays.stream(counts).flatMapToInt(Arrays::stream).mapToLong(c -> (long) c * c).sum();
  }
}
