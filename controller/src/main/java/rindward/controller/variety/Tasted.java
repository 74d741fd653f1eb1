package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rindward.controller.lot.Session;
import rindward.controller.lot.Tasting.Served;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.FlightResult;
import rindward.controller.tasting.SampleMean;

/**
 * What one closed session gave one sample, on average.
 *
 * @param session which
 * @param sample what was served
 * @param liking mean of the panel on the nine-point scale
 */
record Tasted(Session session, Served sample, double liking) {
  /** Returns everything that closed sessions gave one lot. */
  static List<Tasted> of(Grown grown, List<Session> sessions) {
    List<Tasted> tasted = new ArrayList<>();
    for (Session session : sessions) {
      for (Served sample : session.planned().samples()) {
        if (sample.lot().equals(grown.lot().code()) && grown.isCuredBy(session.planned().at())) {
          liking(session, sample)
              .ifPresent(liking -> tasted.add(new Tasted(session, sample, liking)));
        }
      }
    }
    return tasted;
  }

  Instant at() {
    return session.planned().at();
  }

  private static Optional<Double> liking(Session session, Served sample) {
    OptionalDouble mean =
        session.result().stream()
            .flatMap(result -> result.results(Attribute.LIKING).stream())
            .map(FlightResult::means)
            .flatMap(List::stream)
            .filter(m -> m.sample().equals(sample.name()))
            .mapToDouble(SampleMean::mean)
            .average();
    return mean.isPresent() ? Optional.of(mean.getAsDouble()) : Optional.empty();
  }
}
