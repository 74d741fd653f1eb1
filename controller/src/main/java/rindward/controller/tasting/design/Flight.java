package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Samples tasted in one go.
 *
 * @param samples names, no two alike
 * @param duplicate the sample that is served twice, unknown to the tasters
 */
public record Flight(List<String> samples, Optional<String> duplicate) {
  public Flight {
    samples = List.copyOf(samples);
  }

  /** Returns the sample in each cup, the hidden duplicate last. */
  List<String> cups() {
    List<String> cups = new ArrayList<>(samples);
    duplicate.ifPresent(cups::add);
    return cups;
  }

  /**
   * Spreads a session over as few flights as will hold it, evenly; the check is in every flight,
   * the duplicate in the first that has its sample.
   */
  static List<Flight> of(SessionRequest request) {
    return of(request, request.sampleNames());
  }

  /** The same with the samples in an order drawn at random, so that no go has those typed first. */
  static List<Flight> drawn(SessionRequest request, Draw draw) {
    return of(request, draw.shuffled(request.sampleNames()));
  }

  private static List<Flight> of(SessionRequest request, List<String> names) {
    List<String> others = new ArrayList<>(names);
    int count = request.flightCount();
    if (count > 1) {
      request.check().ifPresent(others::remove);
    }
    List<Flight> flights = new ArrayList<>();
    Optional<String> duplicate = request.duplicate();
    for (int i = 0; i < count; i++) {
      List<String> samples =
          new ArrayList<>(
              others.subList(others.size() * i / count, others.size() * (i + 1) / count));
      if (count > 1) {
        request.check().ifPresent(samples::add);
      }
      Optional<String> here = duplicate.filter(samples::contains);
      flights.add(new Flight(samples, here));
      duplicate = here.isPresent() ? Optional.empty() : duplicate;
    }
    return flights;
  }
}
