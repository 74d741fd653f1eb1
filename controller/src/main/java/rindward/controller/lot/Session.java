package rindward.controller.lot;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.analysis.ClosedSession;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.Sheet;

/**
 * A tasting session as it stands.
 *
 * @param planned what was planned, and the seed
 * @param plan what the seed draws
 * @param cooked every fruit that was cooked, in the order in which it was said
 * @param scored every answer, in the order in which it was given
 * @param ticked every answer to what a cup is good for, in the order in which it was given
 * @param closed how it ended; empty while it is under way
 * @param result what the scores say with the codes opened; empty while it is under way
 */
public record Session(
    SessionPlanned planned,
    SessionPlan plan,
    List<SampleCooked> cooked,
    List<Scored> scored,
    List<UsesTicked> ticked,
    Optional<SessionClosed> closed,
    Optional<ClosedSession> result) {
  public Session {
    cooked = List.copyOf(cooked);
    scored = List.copyOf(scored);
    ticked = List.copyOf(ticked);
  }

  /** The same with its result, of which each part is worked out when it is first asked. */
  public Session(
      SessionPlanned planned,
      SessionPlan plan,
      List<SampleCooked> cooked,
      List<Scored> scored,
      List<UsesTicked> ticked,
      Optional<SessionClosed> closed) {
    this(
        planned,
        plan,
        cooked,
        scored,
        ticked,
        closed,
        closed.map(
            end ->
                new ClosedSession(
                    plan,
                    planned.mainQuestion(),
                    scored.stream()
                        .map(s -> new Score(s.code(), s.attribute(), s.value()))
                        .toList(),
                    sample -> fruitsOf(cooked, sample).size())));
  }

  /** Returns its name. */
  public String name() {
    return planned.session();
  }

  /**
   * Returns how many panelists found a sample good for each use; of a cup served twice, the first
   * counts. Empty while the session is under way.
   */
  public Map<Use, Integer> goodFor(String sample) {
    Map<Use, Integer> counts = new EnumMap<>(Use.class);
    if (closed.isPresent()) {
      for (Sheet sheet : plan.sheets()) {
        sheet.cups().stream()
            .filter(cup -> cup.sample().equals(sample) && !cup.isDuplicate())
            .flatMap(cup -> uses(sheet, cup).stream())
            .distinct()
            .forEach(use -> counts.merge(use, 1, Integer::sum));
      }
    }
    return counts;
  }

  private List<Use> uses(Sheet sheet, Cup cup) {
    return ticked.stream()
        .filter(t -> t.panelist().equals(sheet.panelist()) && t.code().equals(cup.code()))
        .reduce((first, second) -> second)
        .map(UsesTicked::uses)
        .orElse(List.of());
  }

  /** Returns the sample of that name. */
  public Optional<Served> sample(String name) {
    return planned.samples().stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /**
   * Returns the fruits that were cooked for a sample; empty where nobody said which. What was only
   * planned for it is not known to have been in any cup.
   */
  public SortedSet<String> fruitsOf(String sample) {
    return fruitsOf(cooked, sample);
  }

  private static SortedSet<String> fruitsOf(List<SampleCooked> cooked, String sample) {
    return cooked.stream()
        .filter(fruit -> fruit.sample().equals(sample))
        .map(SampleCooked::fruit)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Returns the samples that somebody scored, and nobody said which fruits were in their cups. */
  public List<Served> fruitsOpen() {
    Set<String> codes = scored.stream().map(Scored::code).collect(Collectors.toSet());
    Set<String> tasted =
        plan.sheets().stream()
            .flatMap(sheet -> sheet.cups().stream())
            .filter(cup -> codes.contains(cup.code()))
            .map(Cup::sample)
            .collect(Collectors.toSet());
    return planned.samples().stream()
        .filter(sample -> tasted.contains(sample.name()) && fruitsOf(sample.name()).isEmpty())
        .toList();
  }
}
