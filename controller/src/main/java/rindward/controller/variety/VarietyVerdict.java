package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.journal.Planted;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.lot.Session;

/**
 * The verdict on a variety, its three questions apart.
 *
 * @param yield what it bore
 * @param apart lots that say nothing of its taste, and why; one sentence each
 * @param besideCheck how it stands beside the check of its class; one sentence each
 * @param stillKeeping sound fruits left: until they are gone the verdict is provisional
 * @param decided what the grower decided last; empty if nothing yet
 */
public record VarietyVerdict(
    VarietyName name,
    Ripening ripening,
    Eating eating,
    Keeping keeping,
    Yield yield,
    List<String> apart,
    List<String> besideCheck,
    int stillKeeping,
    Optional<VarietyDecided> decided) {
  public VarietyVerdict {
    apart = List.copyOf(apart);
    besideCheck = List.copyOf(besideCheck);
  }

  /**
   * Judges one variety.
   *
   * @param lots every lot of every variety, over all years
   * @param plans every plot that was planned; says which varieties others are compared with
   * @param sessions every session
   * @param decisions every decision, in the order in which it was made
   */
  public static VarietyVerdict of(
      VarietyName name,
      List<Grown> lots,
      Collection<Planted> plans,
      List<Session> sessions,
      List<VarietyDecided> decisions,
      Instant now) {
    List<Grown> own = lots.stream().filter(g -> g.name().equals(name)).toList();
    List<Session> closed = sessions.stream().filter(s -> s.closed().isPresent()).toList();
    Keeping keeping = Keeping.of(own, now);
    Set<VarietyName> checks =
        plans.stream()
            .filter(Planted::check)
            .map(plan -> new VarietyName(plan.crop(), plan.variety()))
            .collect(Collectors.toSet());
    List<String> beside = new ArrayList<>();
    for (VarietyName check : checksOf(name, own, lots, checks)) {
      List<Grown> its = lots.stream().filter(g -> g.name().equals(check)).toList();
      BesideCheck pair = new BesideCheck(name, check);
      beside.addAll(pair.eating(codes(fit(own)), codes(fit(its)), closed));
      pair.keeping(keeping.survival(), Keeping.of(its, now).survival()).ifPresent(beside::add);
    }
    return new VarietyVerdict(
        name,
        Ripening.of(own),
        Eating.of(name, fit(own), Tasted.byLot(closed)),
        keeping,
        Yield.of(name, own, plans),
        own.stream().filter(g -> !SetApart.of(g).isEmpty()).map(VarietyVerdict::apart).toList(),
        beside,
        own.stream().mapToInt(g -> Math.max(0, g.lot().fruits().sound())).sum(),
        decisions.stream()
            .filter(d -> d.crop().equals(name.crop()) && d.variety().equals(name.variety()))
            .reduce((first, second) -> second));
  }

  /** Returns the first two answers in one line; how it keeps needs its numbers. */
  public String words() {
    return eating.words() + ", " + ripening.answer();
  }

  /** The checks of its own class, itself left out; there is no comparing across classes. */
  private static List<VarietyName> checksOf(
      VarietyName name, List<Grown> own, List<Grown> lots, Set<VarietyName> checks) {
    return lots.stream()
        .filter(g -> checks.contains(g.name()) && !g.name().equals(name))
        .filter(g -> own.stream().anyMatch(o -> o.crop().group() == g.crop().group()))
        .map(Grown::name)
        .distinct()
        .toList();
  }

  private static List<Grown> fit(List<Grown> lots) {
    return lots.stream().filter(g -> SetApart.of(g).isEmpty()).toList();
  }

  private static Set<String> codes(List<Grown> lots) {
    return lots.stream().map(g -> g.lot().code()).collect(Collectors.toSet());
  }

  private static String apart(Grown grown) {
    return grown.lot().code()
        + " of "
        + grown.season()
        + " says nothing of its taste: "
        + SetApart.of(grown).stream().map(SetApart::words).collect(Collectors.joining(", "))
        + ".";
  }
}
