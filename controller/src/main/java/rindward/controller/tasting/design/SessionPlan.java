package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.tasting.Score;

/**
 * A session as drawn: who gets which cup when, under which code.
 *
 * @param request what it was drawn for
 * @param flights what is tasted in one go, in this order
 * @param orders the serving orders of each flight, panelists in the order of the request
 * @param sheets one a panelist, in the order of the request
 */
public record SessionPlan(
    SessionRequest request, List<Flight> flights, List<ServingOrders> orders, List<Sheet> sheets) {
  public SessionPlan {
    flights = List.copyOf(flights);
    orders = List.copyOf(orders);
    sheets = List.copyOf(sheets);
  }

  /**
   * Draws a session; the same seed draws the same session.
   *
   * @throws IllegalArgumentException if the request has problems
   */
  public static SessionPlan draw(SessionRequest request, long seed) {
    List<String> problems = request.problems();
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    Draw draw = new Draw(seed);
    int panelists = request.panelists().size();
    List<Flight> flights = Flight.of(request);
    List<ServingOrders> orders =
        flights.stream().map(f -> ServingOrders.draw(f.cups().size(), panelists, draw)).toList();
    int cups = flights.stream().mapToInt(f -> f.cups().size()).sum();
    List<String> codes = BlindCodes.draw(cups * panelists, draw);
    List<Sheet> sheets = new ArrayList<>();
    for (int panelist = 0; panelist < panelists; panelist++) {
      List<String> own = codes.subList(panelist * cups, (panelist + 1) * cups);
      sheets.add(
          new Sheet(request.panelists().get(panelist), cups(panelist, flights, orders, own)));
    }
    return new SessionPlan(request, flights, orders, sheets);
  }

  /** Returns why a score cannot be taken, as one sentence, or nothing. */
  public Optional<String> refusal(Score score) {
    return sheets.stream().anyMatch(sheet -> sheet.codes().contains(score.code()))
        ? score.attribute().refusal(score.value())
        : Optional.of(
            "code was '" + score.code() + "' but it must be that of a cup of this session");
  }

  private static List<Cup> cups(
      int panelist, List<Flight> flights, List<ServingOrders> orders, List<String> codes) {
    List<Cup> cups = new ArrayList<>();
    for (int flight = 0; flight < flights.size(); flight++) {
      List<String> samples = flights.get(flight).cups();
      List<Integer> order = orders.get(flight).orders().get(panelist);
      boolean duplicateServed = false;
      Optional<String> duplicate = flights.get(flight).duplicate();
      for (int number : order) {
        String sample = samples.get(number);
        boolean twice = duplicate.isPresent() && duplicate.get().equals(sample);
        cups.add(new Cup(codes.get(cups.size()), flight, sample, twice && duplicateServed));
        duplicateServed |= twice;
      }
    }
    return cups;
  }
}
