package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import rindward.controller.tasting.analysis.Evidence;

/**
 * Does it eat well if it is ripe? By the lots that may be judged, and by what was tasted of them
 * after their cure.
 *
 * @param answer in a few words
 * @param liking mean on the nine-point scale: of sessions, or of kitchen tastes where there is no
 *     session; null if not judged
 * @param evidence how much it rests on; early unless there are three fruits and two sessions
 * @param reasons each one sentence
 */
public record Eating(
    Answer answer, @Nullable Double liking, Evidence evidence, List<String> reasons) {
  /** The answers; the limits are common practice. */
  public enum Answer {
    NOT_JUDGED("eating not judged"),
    WELL("eats well"),
    PASSABLY("eats passably"),
    POORLY("eats poorly");

    private final String words;

    Answer(String words) {
      this.words = words;
    }

    static Answer of(double liking) {
      return liking >= 7 ? WELL : liking >= 5 ? PASSABLY : POORLY;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  public Eating {
    reasons = List.copyOf(reasons);
  }

  /**
   * Judges the lots of one variety.
   *
   * @param fit those that are not set apart
   * @param closed what sessions that are over gave, by lot
   */
  static Eating of(VarietyName name, List<Grown> fit, Map<String, List<Tasted>> closed) {
    List<Tasted> panel = fit.stream().flatMap(g -> Tasted.of(g, closed).stream()).toList();
    List<KitchenTasted> kitchen = fit.stream().flatMap(g -> kitchen(g, closed)).toList();
    List<AgedTaste> aged = aged(fit, closed);
    int fruits =
        cutInKitchen(kitchen) + panel.stream().mapToInt(t -> t.sample().fruits().size()).sum();
    int sessions = (int) panel.stream().map(t -> t.session().name()).distinct().count();
    Evidence evidence = new Evidence(name.variety(), fruits, sessions);
    if (aged.isEmpty()) {
      return new Eating(
          Answer.NOT_JUDGED,
          null,
          evidence,
          List.of("Nothing that was ripe, cured and unhurt has been tasted."));
    }
    Occasion counts = panel.isEmpty() ? Occasion.KITCHEN : Occasion.SESSION;
    double liking =
        aged.stream()
            .filter(t -> t.occasion() == counts)
            .mapToDouble(AgedTaste::liking)
            .average()
            .orElseThrow();
    return new Eating(
        Answer.of(liking), liking, evidence, reasons(liking, evidence, panel, kitchen, aged));
  }

  /** Returns how lots that may be judged were liked at every age at which they were tasted. */
  static List<AgedTaste> aged(List<Grown> fit, Map<String, List<Tasted>> closed) {
    List<AgedTaste> aged = new ArrayList<>();
    for (Grown grown : fit) {
      for (Tasted tasted : Tasted.of(grown, closed)) {
        aged.add(new AgedTaste(grown.day(tasted.at()), tasted.liking(), Occasion.SESSION));
      }
      kitchen(grown, closed)
          .forEach(
              taste -> {
                int liking = Objects.requireNonNull(taste.liking());
                aged.add(new AgedTaste(grown.day(taste.at()), liking, Occasion.KITCHEN));
              });
    }
    return aged;
  }

  /** Returns the kitchen tastes that say how a cured lot's ripe fruits were liked. */
  private static Stream<KitchenTasted> kitchen(Grown grown, Map<String, List<Tasted>> closed) {
    TasteApart apart = new TasteApart(grown, closed);
    return grown.lot().tastes().stream().filter(taste -> apart.alone(taste).isEmpty());
  }

  /** Returns the answer, and that it is early where it is. */
  public String words() {
    return answer != Answer.NOT_JUDGED && evidence.isEarly()
        ? "early impression: " + answer
        : answer.toString();
  }

  /** Counts the fruits of kitchen tastes: one with a tag may have been tasted by several people. */
  private static int cutInKitchen(List<KitchenTasted> tastes) {
    long tagged =
        tastes.stream()
            .filter(taste -> taste.fruit() != null)
            .map(taste -> taste.lot() + " " + taste.fruit())
            .distinct()
            .count();
    long untagged = tastes.stream().filter(taste -> taste.fruit() == null).count();
    return (int) (tagged + untagged);
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static List<String> reasons(
      double liking,
      Evidence evidence,
      List<Tasted> panel,
      List<KitchenTasted> kitchen,
      List<AgedTaste> aged) {
    List<String> reasons = new ArrayList<>();
    reasons.add(
        String.format(
            Locale.ROOT,
            "Liked %.1f of 9, by %s in %s and %s.",
            liking,
            counted(evidence.fruits(), "fruit"),
            counted(evidence.sessions(), "session"),
            counted(kitchen.size(), "kitchen taste")));
    if (evidence.isEarly()) {
      reasons.add(
          "A word on a variety needs "
              + Evidence.ENOUGH_FRUITS
              + " fruits and "
              + Evidence.ENOUGH_SESSIONS
              + " sessions.");
    }
    Optional<EatingWindow> window =
        aged.size() > 1 ? new AgeCurve(aged).window() : Optional.empty();
    window.map(EatingWindow::sentence).ifPresent(reasons::add);
    String uses =
        Stream.concat(
                panel.stream()
                    .flatMap(t -> t.session().goodFor(t.sample().name()).keySet().stream()),
                kitchen.stream().flatMap(taste -> taste.goodFor().stream()))
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
