package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.crop.SpeciesGroup;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.lot.Stop;

/**
 * The verdict on a variety, its three questions apart.
 *
 * @param yield what it bore
 * @param apart lots that say nothing of its taste, and why; one sentence each
 * @param harmful what was found in its fruits that makes people ill; one sentence each
 * @param besideCheck how it stands beside the check of its class; one sentence each
 * @param stillKeeping sound fruits left: until they are gone the verdict is provisional
 * @param decided what the grower decided last; empty if nothing yet
 */
public record VarietyVerdict(
    VarietyName name,
    Ripening ripening,
    Eating eating,
    VarietyKeeping keeping,
    Yield yield,
    List<String> apart,
    List<String> harmful,
    List<String> besideCheck,
    int stillKeeping,
    Optional<VarietyDecided> decided) {
  public VarietyVerdict {
    apart = List.copyOf(apart);
    harmful = List.copyOf(harmful);
    besideCheck = List.copyOf(besideCheck);
  }

  /**
   * Judges one variety.
   *
   * @param now up to which the lots were followed
   */
  public static VarietyVerdict of(VarietyName name, TrialRecord trials, Instant now) {
    List<Grown> own = trials.lotsOf(name);
    VarietyKeeping keeping = VarietyKeeping.of(own, now);
    List<String> beside = new ArrayList<>();
    for (VarietyName check : checksOf(name, own, trials)) {
      List<Grown> its = trials.lotsOf(check);
      BesideCheck pair = new BesideCheck(name, check);
      beside.addAll(pair.eating(codes(fit(own)), codes(fit(its)), trials.closed()));
      pair.keeping(keeping.survival(), VarietyKeeping.of(its, now).survival())
          .ifPresent(beside::add);
    }
    return new VarietyVerdict(
        name,
        Ripening.of(own),
        Eating.of(name, fit(own), trials.tasted()),
        keeping,
        Yield.of(name, own, trials.plans()),
        own.stream().filter(g -> !SetApart.of(g).isEmpty()).map(VarietyVerdict::apart).toList(),
        own.stream().flatMap(VarietyVerdict::harmful).distinct().toList(),
        beside,
        own.stream().mapToInt(g -> Math.max(0, g.lot().fruits().sound())).sum(),
        trials.decided(name));
  }

  /** Returns the first two answers in one line; how it keeps needs its numbers. */
  public String words() {
    String answers = eating.words() + ", " + ripening.answer();
    return harmful.isEmpty() ? answers : "DO NOT EAT (" + harmful.get(0) + "), " + answers;
  }

  private static Stream<String> harmful(Grown grown) {
    return Stop.of(grown.lot(), grown.crop()).stream()
        .flatMap(
            stop ->
                stop.sentences().stream().map(sentence -> grown.lot().code() + ": " + sentence));
  }

  /** The checks of its own class, itself left out; there is no comparing across classes. */
  private static List<VarietyName> checksOf(VarietyName name, List<Grown> own, TrialRecord trials) {
    Set<SpeciesGroup> groups = own.stream().map(g -> g.crop().group()).collect(Collectors.toSet());
    return trials.checks().stream()
        .filter(check -> !check.equals(name))
        .filter(
            check -> trials.lotsOf(check).stream().anyMatch(g -> groups.contains(g.crop().group())))
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
