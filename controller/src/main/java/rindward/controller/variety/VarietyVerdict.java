package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.lot.Stop;

/**
 * The verdict on a variety, its three questions apart.
 *
 * @param chances the same against what is needed
 * @param suggestion what the three speak for
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
    Chances chances,
    Suggestion suggestion,
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
    List<VarietyName> checks = checksOf(name, trials);
    for (VarietyName check : checks) {
      new BesideCheck(name, check)
          .keeping(keeping.lots(), VarietyKeeping.of(trials.lotsOf(check), now).lots())
          .ifPresent(beside::add);
    }
    Eating eating = eating(name, own, trials);
    List<String> harmful = own.stream().flatMap(VarietyVerdict::harmful).distinct().toList();
    Chances chances = chances(own, eating, now);
    return new VarietyVerdict(
        name,
        Ripening.of(own),
        eating,
        keeping,
        chances,
        Suggestion.of(
            chances,
            !harmful.isEmpty(),
            (int) own.stream().map(Grown::season).distinct().count(),
            eating.settling()),
        Yield.of(name, own, trials.plans()),
        own.stream().filter(g -> !SetApart.of(g).isEmpty()).map(VarietyVerdict::apart).toList(),
        harmful,
        beside,
        own.stream().mapToInt(g -> Math.max(0, g.lot().fruits().sound())).sum(),
        trials.decided(name));
  }

  private static Eating eating(VarietyName name, List<Grown> own, TrialRecord trials) {
    String typeName = own.stream().map(g -> g.crop().name()).findFirst().orElse(name.crop());
    return Eating.of(
        fit(own), trials.tasted(), trials.liking().of(name.crop(), name.variety()), typeName);
  }

  private static Chances chances(List<Grown> own, Eating eating, Instant now) {
    if (own.isEmpty()) {
      Prospect none = Prospect.unknown("No lot of it came in.");
      return new Chances(none, eating.prospect(), none);
    }
    Need need = Need.of(own.get(0).crop());
    return new Chances(
        NeedsMet.ripens(own, need), eating.prospect(), NeedsMet.keeps(own, need, now));
  }

  /** Returns what is said of its ripening, the need first. */
  public List<String> ripensBecause() {
    return Chances.with(chances.ripens(), ripening.reasons());
  }

  /** Returns what is said of its keeping, the need first. */
  public List<String> keepsBecause() {
    List<String> sentences = keeping.sentences();
    return Chances.with(chances.keeps(), sentences.subList(1, sentences.size()));
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

  /** The checks of its own type, itself left out; there is no comparing across types. */
  private static List<VarietyName> checksOf(VarietyName name, TrialRecord trials) {
    return trials.checks().stream()
        .filter(check -> !check.equals(name) && check.crop().equals(name.crop()))
        .toList();
  }

  private static List<Grown> fit(List<Grown> lots) {
    return lots.stream().filter(g -> SetApart.of(g).isEmpty()).toList();
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
