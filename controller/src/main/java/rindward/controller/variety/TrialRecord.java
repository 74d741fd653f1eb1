package rindward.controller.variety;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.journal.Planted;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.lot.Session;
import rindward.controller.variety.liking.LikingEstimate;
import rindward.controller.variety.liking.TasteScore;

/**
 * Everything by which varieties are judged.
 *
 * @param lots every lot of every variety, over all years, in the order in which they came in
 * @param plans every plot that was planned; says which varieties others are compared with
 * @param closed every session that is over
 * @param tasted what these gave, by lot
 * @param liking what all of their scores say together
 * @param decisions every decision, in the order in which it was made
 */
public record TrialRecord(
    Map<VarietyName, List<Grown>> lots,
    Collection<Planted> plans,
    List<Session> closed,
    Map<String, List<Tasted>> tasted,
    LikingEstimate liking,
    List<VarietyDecided> decisions) {
  /** Gathers what was told, before anything is reckoned from the scores. */
  public TrialRecord(
      Map<VarietyName, List<Grown>> lots,
      Collection<Planted> plans,
      List<Session> closed,
      Map<String, List<Tasted>> tasted,
      List<VarietyDecided> decisions) {
    this(lots, plans, closed, tasted, LikingEstimate.of(List.of(), Map.of()), decisions);
  }

  /** Returns the same with what its scores say. */
  public TrialRecord with(LikingEstimate estimate) {
    return new TrialRecord(lots, plans, closed, tasted, estimate, decisions);
  }

  /** Returns every score for liking that may speak of a variety. */
  public List<TasteScore> scores() {
    return Scores.of(lots.values(), closed);
  }

  /** Returns the variety that the others of its type are compared with, by the type's key. */
  public Map<String, String> checkOfType() {
    Map<String, String> checks = new TreeMap<>();
    checks().forEach(name -> checks.putIfAbsent(name.crop(), name.variety()));
    return checks;
  }

  /** Returns the lots of one variety; none if it never came in. */
  List<Grown> lotsOf(VarietyName name) {
    return lots.getOrDefault(name, List.of());
  }

  /** Returns the varieties that others are compared with, in the order in which they came in. */
  public List<VarietyName> checks() {
    Set<VarietyName> planned =
        plans.stream()
            .filter(Planted::check)
            .map(plan -> new VarietyName(plan.crop(), plan.variety()))
            .collect(Collectors.toSet());
    return lots.keySet().stream().filter(planned::contains).toList();
  }

  /** Returns the lots of one variety, and those of every check beside which it may be judged. */
  public List<Grown> comparedWith(VarietyName name) {
    return Stream.concat(Stream.of(name), checks().stream())
        .distinct()
        .flatMap(each -> lotsOf(each).stream())
        .toList();
  }

  /** Returns what the grower decided last of a variety; empty if nothing yet. */
  Optional<VarietyDecided> decided(VarietyName name) {
    return decisions.stream()
        .filter(d -> d.crop().equals(name.crop()) && d.variety().equals(name.variety()))
        .reduce((first, second) -> second);
  }
}
