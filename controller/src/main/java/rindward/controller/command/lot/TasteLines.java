package rindward.controller.command.lot;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.controller.variety.Grown;
import rindward.controller.variety.TasteApart;
import rindward.controller.variety.Tasted;

/**
 * Every taste of a lot as {@code lot show} tells it, those that do not count included, with why.
 */
final class TasteLines {
  private final Grown grown;
  private final Map<String, List<Tasted>> closed;
  private final ZoneId zone;

  /**
   * @param closed what sessions that are over gave, by lot
   */
  TasteLines(Grown grown, Map<String, List<Tasted>> closed, ZoneId zone) {
    this.grown = grown;
    this.closed = closed;
    this.zone = zone;
  }

  private record Line(Instant at, String text) {}

  /** Returns them in the order in which they were tasted. */
  List<String> lines() {
    TasteApart apart = new TasteApart(grown);
    Stream<Line> kitchen =
        grown.lot().tastes().stream()
            .map(
                taste ->
                    line(
                        taste.at(),
                        taste.liking() == null ? null : taste.liking().doubleValue(),
                        taste.word().isEmpty()
                            ? "in the kitchen"
                            : "in the kitchen, " + taste.word(),
                        apart.why(taste)));
    Stream<Line> panel =
        closed.getOrDefault(grown.lot().code(), List.of()).stream()
            .map(
                tasted ->
                    line(
                        tasted.at(),
                        tasted.liking(),
                        "in session " + tasted.session().name(),
                        apart.why(tasted)));
    return Stream.concat(kitchen, panel)
        .sorted(Comparator.comparing(Line::at))
        .map(Line::text)
        .toList();
  }

  private Line line(Instant at, @Nullable Double liking, String where, Optional<String> why) {
    return new Line(
        at,
        at.atZone(zone).toLocalDate()
            + (liking == null ? "" : String.format(Locale.ROOT, ", liked %.1f of 9", liking))
            + ", "
            + where
            + why.map(reason -> "; says nothing of the variety: " + reason).orElse(""));
  }
}
