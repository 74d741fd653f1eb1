package rindward.controller.variety;

import java.util.List;
import java.util.stream.Stream;

/**
 * The three answers against what is needed: they never mix.
 *
 * @param ripens whether enough of it is ripe when it is picked
 * @param eats whether it eats as well as is needed
 * @param keeps whether enough of it is sound until the day that the grower needs
 */
public record Chances(Prospect ripens, Prospect eats, Prospect keeps) {
  /** Returns what is said of a question: against the need first, then what it rests on. */
  static List<String> with(Prospect prospect, List<String> reasons) {
    return Stream.concat(Stream.of(prospect.sentence()), reasons.stream()).distinct().toList();
  }
}
