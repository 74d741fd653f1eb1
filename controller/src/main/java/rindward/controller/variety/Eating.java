package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.analysis.AgeCurve;
import rindward.controller.tasting.analysis.AgedTaste;
import rindward.controller.tasting.analysis.AgedTaste.Occasion;
import rindward.controller.tasting.analysis.EatingWindow;
import rindward.controller.variety.liking.LikingStanding;

/**
 * Does it eat well if it is ripe? Beside the check of its own type, or beside the grower's own
 * average of it, by every score there is: panels differ by more than varieties do, so no number of
 * points is good or bad by itself.
 *
 * @param standing by the scores of all years; empty if nothing that speaks was scored
 * @param prospect whether it eats as well as is needed
 * @param reasons each one sentence
 */
public record Eating(
    Optional<LikingStanding> standing, Prospect prospect, String words, List<String> reasons) {
  public Eating {
    reasons = List.copyOf(reasons);
  }

  /**
   * Judges the lots of one variety.
   *
   * @param fit those that are not set apart
   * @param closed what sessions that are over gave, by lot
   * @param typeName what its type is called in a sentence
   */
  static Eating of(
      List<Grown> fit,
      Map<String, List<Tasted>> closed,
      Optional<LikingStanding> standing,
      String typeName) {
    if (standing.filter(s -> s.basis().fruits() > 0).isEmpty()) {
      String nothing = "Nothing that was ripe, cured and unhurt has been tasted.";
      return new Eating(
          Optional.empty(), Prospect.unknown(nothing), "eating not judged", List.of(nothing));
    }
    LikingWords said = new LikingWords(standing.get(), typeName);
    List<String> reasons = new ArrayList<>(said.sentences());
    reasons.addAll(ages(fit, closed));
    return new Eating(standing, said.prospect(), said.words(), reasons);
  }

  /** Returns how it is liked on the scale, as the grower's people would score it; null if not. */
  public @Nullable Double liking() {
    return standing.map(s -> s.level().mean()).orElse(null);
  }

  /** Returns how many fruits the answer rests on. */
  public int fruits() {
    return standing.map(s -> s.basis().fruits()).orElse(0);
  }

  /** Returns how many sessions the answer rests on. */
  public int sessions() {
    return standing.map(s -> s.basis().sessions()).orElse(0);
  }

  /** Tells whether the scores say neither yes nor no. */
  public boolean isOpen() {
    return prospect.says() == Prospect.Says.OPEN;
  }

  /** Returns what would settle how it eats, one sentence; empty if it is settled. */
  Optional<String> settling() {
    return standing.flatMap(
        s -> s.beside().flatMap(beside -> new LikingWords(s, "").settling(beside)));
  }

  /** Returns how lots that may be judged were liked at every age at which they were tasted. */
  static List<AgedTaste> aged(List<Grown> fit, Map<String, List<Tasted>> closed) {
    List<AgedTaste> aged = new ArrayList<>();
    for (Grown grown : fit) {
      for (Tasted tasted : Tasted.of(grown, closed)) {
        aged.add(new AgedTaste(grown.day(tasted.at()), tasted.liking(), Occasion.SESSION));
      }
      kitchen(grown)
          .forEach(
              taste -> {
                int liking = Objects.requireNonNull(taste.liking());
                aged.add(new AgedTaste(grown.day(taste.at()), liking, Occasion.KITCHEN));
              });
    }
    return aged;
  }

  /** Returns the kitchen tastes that say how a cured lot's ripe fruits were liked. */
  private static Stream<KitchenTasted> kitchen(Grown grown) {
    TasteApart apart = new TasteApart(grown);
    return grown.lot().tastes().stream().filter(taste -> apart.alone(taste).isEmpty());
  }

  /** What its ages and its uses are, a sentence each. */
  private static List<String> ages(List<Grown> fit, Map<String, List<Tasted>> closed) {
    List<String> reasons = new ArrayList<>();
    List<AgedTaste> aged = aged(fit, closed);
    Optional<EatingWindow> window =
        aged.size() > 1 ? new AgeCurve(aged).window() : Optional.empty();
    window.map(EatingWindow::sentence).ifPresent(reasons::add);
    String uses =
        fit.stream()
            .flatMap(
                grown ->
                    Stream.concat(
                        Tasted.of(grown, closed).stream()
                            .flatMap(t -> t.session().goodFor(t.sample().name()).keySet().stream()),
                        kitchen(grown).flatMap(taste -> taste.goodFor().stream())))
            .distinct()
            .sorted()
            .map(Use::words)
            .collect(Collectors.joining(", "));
    if (!uses.isEmpty()) {
      reasons.add("Said to be good for " + uses + ".");
    }
    return reasons;
  }
}
