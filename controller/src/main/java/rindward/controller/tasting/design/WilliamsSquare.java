package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Serving orders in which every sample stands equally often in every place and equally often right
 * after every other (Williams 1949): n orders for an even number of samples, 2n for an odd one.
 */
final class WilliamsSquare {
  private WilliamsSquare() {}

  /**
   * Returns the orders; samples are numbered from zero.
   *
   * @param samples at least two
   */
  static List<List<Integer>> orders(int samples) {
    List<List<Integer>> orders = new ArrayList<>();
    List<Integer> base = base(samples);
    for (int shift = 0; shift < samples; shift++) {
      int by = shift;
      orders.add(base.stream().map(sample -> (sample + by) % samples).toList());
    }
    if (samples % 2 == 1) {
      for (List<Integer> order : List.copyOf(orders)) {
        List<Integer> reversed = new ArrayList<>(order);
        Collections.reverse(reversed);
        orders.add(List.copyOf(reversed));
      }
    }
    return orders;
  }

  /** Returns 1, 2, n, 3, n-1 and so on, counted from zero. */
  private static List<Integer> base(int samples) {
    List<Integer> base = new ArrayList<>();
    base.add(0);
    int low = 1;
    int high = samples - 1;
    while (low <= high) {
      base.add(low++);
      if (low <= high) {
        base.add(high--);
      }
    }
    return base;
  }
}
