package rindward.controller.tasting.design;

import java.util.List;

/**
 * What one panelist tastes, in this order. Only {@link #codes()} may reach the panelist before the
 * session is closed.
 *
 * @param panelist who
 * @param cups flight after flight, in serving order
 */
public record Sheet(String panelist, List<Cup> cups) {
  public Sheet {
    cups = List.copyOf(cups);
  }

  /** Returns the codes in serving order. */
  public List<String> codes() {
    return cups.stream().map(Cup::code).toList();
  }
}
