package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.journal.Served;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;

/**
 * What one closed session gave one sample, on average.
 *
 * @param session which
 * @param sample what was served
 * @param liking mean of the panel on the nine-point scale
 */
public record Tasted(Session session, Served sample, double liking) {
  /** Returns everything that closed sessions gave, by the code of the lot. */
  public static Map<String, List<Tasted>> byLot(List<Session> closed) {
    Map<String, List<Tasted>> byLot = new HashMap<>();
    for (Session session : closed) {
      Map<String, Double> means =
          session.result().map(result -> result.means(Attribute.LIKING)).orElse(Map.of());
      for (Served sample : session.planned().samples()) {
        Double liking = means.get(sample.name());
        if (liking != null) {
          byLot
              .computeIfAbsent(sample.lot(), lot -> new ArrayList<>())
              .add(new Tasted(session, sample, liking));
        }
      }
    }
    return byLot;
  }

  /** Returns what one lot was given once it had cured, by cups in which no fruit was unripe. */
  public static List<Tasted> of(Grown grown, Map<String, List<Tasted>> byLot) {
    TasteApart apart = new TasteApart(grown);
    return byLot.getOrDefault(grown.lot().code(), List.of()).stream()
        .filter(tasted -> apart.alone(tasted).isEmpty())
        .toList();
  }

  public Instant at() {
    return session.planned().at();
  }

  /** Returns the fruits that were cooked for it; empty where it is not known which. */
  public Set<String> fruits() {
    return session.fruitsOf(sample.name());
  }
}
