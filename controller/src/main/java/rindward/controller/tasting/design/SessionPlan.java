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
   * Draws a session as plans with a key are drawn: goes at random, each panelist beginning with
   * another, the hidden duplicate anywhere but after its twin. The same key draws the same session.
   *
   * @throws IllegalArgumentException if the request has problems
   */
  public static SessionPlan draw(SessionRequest request, String key) {
    check(request);
    Draw draw = new Draw(key);
    int panelists = request.panelists().size();
    List<Flight> flights = Flight.drawn(request, draw);
    List<ServingOrders> orders =
        flights.stream().map(f -> ServingOrders.draw(f.cups().size(), panelists, draw)).toList();
    int cups = flights.stream().mapToInt(f -> f.cups().size()).sum();
    List<String> codes = BlindCodes.draw(cups * panelists, draw);
    int begins = draw.below(flights.size());
    List<Sheet> sheets = new ArrayList<>();
    for (int panelist = 0; panelist < panelists; panelist++) {
      List<Cup> own = new ArrayList<>();
      for (int turn = 0; turn < flights.size(); turn++) {
        int flight = (begins + panelist + turn) % flights.size();
        List<String> served =
            Serving.samples(flights.get(flight), orders.get(flight).orders().get(panelist), draw);
        int uncounted = Serving.uncounted(flights.get(flight), served, draw);
        for (int place = 0; place < served.size(); place++) {
          String code = codes.get(panelist * cups + own.size());
          own.add(new Cup(code, flight, served.get(place), place == uncounted));
        }
      }
      sheets.add(new Sheet(request.panelists().get(panelist), own));
    }
    return new SessionPlan(request, flights, orders, sheets);
  }

  /**
   * Draws a session as plans without a key were drawn: their codes stand on cups already.
   *
   * @throws IllegalArgumentException if the request has problems
   */
  public static SessionPlan draw(SessionRequest request, long seed) {
    check(request);
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

  private static void check(SessionRequest request) {
    List<String> problems = request.problems();
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
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
