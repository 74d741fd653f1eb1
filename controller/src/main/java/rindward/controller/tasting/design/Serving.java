package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One panelist's cups of one flight, in order: the hidden duplicate never follows its twin, and
 * which of the two counts is drawn, so that both stand anywhere.
 */
final class Serving {
  private static final String NONE = "";

  private Serving() {}

  /**
   * Returns the samples in their order.
   *
   * @param order numbers of the flight's cups
   */
  static List<String> samples(Flight flight, List<Integer> order, Draw draw) {
    List<String> cups = flight.cups();
    List<String> served = new ArrayList<>(order.stream().map(cups::get).toList());
    String twice = flight.duplicate().orElse(NONE);
    int first = served.indexOf(twice);
    int second = served.lastIndexOf(twice);
    if (second == first + 1) {
      // One of the two changes places with a cup that is not beside the other.
      boolean movesFirst = draw.below(2) == 0;
      int moving = movesFirst ? first : second;
      int staying = movesFirst ? second : first;
      List<Integer> free =
          IntStream.range(0, served.size())
              .filter(place -> place != moving && Math.abs(place - staying) > 1)
              .boxed()
              .toList();
      if (free.isEmpty()) {
        // Three cups: only its ends are apart.
        Collections.swap(served, 1, first == 0 ? 2 : 0);
      } else {
        Collections.swap(served, moving, free.get(draw.below(free.size())));
      }
    }
    return served;
  }

  /** Returns the place of the cup that does not count; -1 where none is served twice. */
  static int uncounted(Flight flight, List<String> served, Draw draw) {
    if (flight.duplicate().isEmpty()) {
      return -1;
    }
    String twice = flight.duplicate().get();
    return draw.below(2) == 0 ? served.indexOf(twice) : served.lastIndexOf(twice);
  }
}
