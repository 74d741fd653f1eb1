package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;

/** Chance from a seed: the same seed draws the same session again. Not thread-safe. */
public final class Draw {
  /** Returns a number from zero to below its argument. */
  private final IntUnaryOperator random;

  public Draw(long seed) {
    SplittableRandom seeded = new SplittableRandom(seed);
    this.random = seeded::nextInt;
  }

  /**
   * @param key that nobody can guess
   */
  public Draw(String key) {
    this.random = new HashStream(key)::below;
  }

  /** Returns a number from zero to below {@code bound}. */
  int below(int bound) {
    return random.applyAsInt(bound);
  }

  /** Puts the values into an order drawn at random, all orders being equally likely. */
  public void shuffle(int[] values) {
    for (int i = values.length - 1; i > 0; i--) {
      int other = below(i + 1);
      int value = values[i];
      values[i] = values[other];
      values[other] = value;
    }
  }

  /** Puts the values into an order drawn at random, all orders being equally likely. */
  public void shuffle(double[] values) {
    for (int i = values.length - 1; i > 0; i--) {
      int other = below(i + 1);
      double value = values[i];
      values[i] = values[other];
      values[other] = value;
    }
  }

  /** Returns the same elements in an order drawn at random. */
  <T> List<T> shuffled(List<T> elements) {
    int[] order = new int[elements.size()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    shuffle(order);
    List<T> drawn = new ArrayList<>(order.length);
    for (int index : order) {
      drawn.add(elements.get(index));
    }
    return drawn;
  }
}
