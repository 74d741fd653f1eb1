package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Counts the orders of the last panelist's ranks r that set given sums s far enough apart. As
 * {@code sum (s+r)^2 = sum s^2 + sum r^2 + 2 s.r}, only the scalar product s.r depends on the
 * order. The ranks are dealt out to a left and a right half of the samples in every way; then each
 * half is ordered on its own, and a sorted list of products meets another: hundreds of steps for
 * tens of thousands of orders.
 */
final class LastPanelist {
  private final int[] ranks;
  private final long perOrder;
  private final long ownSquares;
  private final List<Deal> deals = new ArrayList<>();

  /** One way to deal the ranks out: all orders of the left ones, and of the right ones. */
  private record Deal(int[][] left, int[][] right) {}

  LastPanelist(int[] ranks) {
    this.ranks = ranks.clone();
    Arrays.sort(this.ranks);
    this.perOrder = RankOrders.perOrder(ranks);
    this.ownSquares = squares(ranks);
    int half = ranks.length / 2;
    for (int dealt = 0; dealt < 1 << ranks.length; dealt++) {
      if (Integer.bitCount(dealt) == half) {
        deals.add(new Deal(orders(dealt, 1), orders(dealt, 0)));
      }
    }
  }

  /** Returns about how many steps {@link #atLeast} takes. */
  static long steps(int samples) {
    int half = samples / 2;
    long deals = RankOrders.factorial(samples);
    return deals / RankOrders.factorial(half) + deals / RankOrders.factorial(samples - half);
  }

  /** Returns how many orders bring the sum of squared sums to {@code least} or more. */
  long atLeast(long least, int[] sortedSums) {
    long needed = least - squares(sortedSums) - ownSquares;
    // Twice the product must reach what is needed; like with like gives the largest product.
    if (2L * product(sortedSums, 0, ranks) < needed) {
      return 0;
    }
    long orders = 0;
    for (Deal deal : deals) {
      int[] left = products(sortedSums, 0, deal.left());
      int[] right = products(sortedSums, sortedSums.length / 2, deal.right());
      int from = right.length;
      for (int value : left) {
        while (from > 0 && 2L * (value + right[from - 1]) >= needed) {
          from--;
        }
        orders += right.length - from;
      }
    }
    return orders / perOrder;
  }

  private static int[] products(int[] sums, int from, int[][] orders) {
    int[] products = new int[orders.length];
    for (int i = 0; i < products.length; i++) {
      products[i] = product(sums, from, orders[i]);
    }
    Arrays.sort(products);
    return products;
  }

  private static int product(int[] sums, int from, int[] order) {
    int product = 0;
    for (int i = 0; i < order.length; i++) {
      product += sums[from + i] * order[i];
    }
    return product;
  }

  private static long squares(int[] values) {
    return Arrays.stream(values).mapToLong(value -> (long) value * value).sum();
  }

  /** Orders places, not ranks, so that equal ranks count as different and every deal alike. */
  private int[][] orders(int dealt, int side) {
    int[] places =
        IntStream.range(0, ranks.length).filter(place -> (dealt >> place & 1) == side).toArray();
    return Arrays.stream(RankOrders.all(places))
        .map(order -> Arrays.stream(order).map(place -> ranks[place]).toArray())
        .toArray(int[][]::new);
  }
}
