package rindward.controller.tasting.design;

import java.util.List;

/**
 * What is in a cup: one fruit, or a composite of two or three.
 *
 * @param name what the cook calls it, such as a lot's code; never shown to a panelist
 * @param fruits the fruits that were cut for it
 */
public record Sample(String name, List<String> fruits) {
  private static final int MOST_FRUITS = 3;

  public Sample {
    fruits = List.copyOf(fruits);
    if (fruits.isEmpty() || fruits.size() > MOST_FRUITS) {
      throw new IllegalArgumentException(
          "fruits of " + name + " were '" + fruits + "' but they must be one to three");
    }
  }
}
