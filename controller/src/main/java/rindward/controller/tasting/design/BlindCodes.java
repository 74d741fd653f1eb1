package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.List;

/**
 * Three-digit codes that say nothing: three different digits, the first not zero, no run up or down
 * such as 345, and none that reads as another number upside down, such as 619. From memory of
 * common practice.
 */
final class BlindCodes {
  private static final List<String> ALL = all();

  private BlindCodes() {}

  /** Returns how many codes there are. */
  static int available() {
    return ALL.size();
  }

  /**
   * Draws codes, no two alike.
   *
   * @param count at most {@link #available()}
   */
  static List<String> draw(int count, Draw draw) {
    return draw.shuffled(ALL).subList(0, count);
  }

  private static List<String> all() {
    List<String> codes = new ArrayList<>();
    for (int number = 100; number <= 999; number++) {
      String code = Integer.toString(number);
      if (saysNothing(code)) {
        codes.add(code);
      }
    }
    return List.copyOf(codes);
  }

  private static boolean saysNothing(String code) {
    int first = code.charAt(0);
    int second = code.charAt(1);
    int third = code.charAt(2);
    boolean differ = first != second && second != third && first != third;
    boolean run = second - first == third - second && Math.abs(second - first) == 1;
    boolean readsUpsideDown = code.chars().allMatch(digit -> "01689".indexOf(digit) >= 0);
    return differ && !run && !readsUpsideDown;
  }
}
