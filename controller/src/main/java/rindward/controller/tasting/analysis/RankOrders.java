package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The distinct orders in which one panelist's ranks can be handed to the samples. */
final class RankOrders {
  private RankOrders() {}

  /** Returns how many there are: k! over t! for each tie of t; for at most twenty ranks. */
  static long count(int[] ranks) {
    return factorial(ranks.length) / perOrder(ranks);
  }

  /** Returns how many orders of ranks seen as different look the same because of ties. */
  static long perOrder(int[] ranks) {
    long same = 1;
    for (int rank : Arrays.stream(ranks).distinct().toArray()) {
      same *= factorial((int) Arrays.stream(ranks).filter(r -> r == rank).count());
    }
    return same;
  }

  /** Returns all of them, in the order of the dictionary. */
  static int[][] all(int[] ranks) {
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

  static long factorial(int n) {
    long product = 1;
    for (int i = 2; i <= n; i++) {
      product *= i;
    }
    return product;
  }
}
