package rindward.controller.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Weighed;

/**
 * One fruit that somebody picked out of its lot, and everything that was said of it. Whoever counts
 * fruits counts these: never plans, and never tastes.
 *
 * @param name its tag, or the number it got when it was picked out; of one without either, the
 *     occasion on which it was cut
 * @param isNamed whether somebody gave it that name
 * @param harms what was found in it that may make people ill
 */
public record Fruit(
    String name,
    boolean isNamed,
    List<Weighed> weighings,
    List<KitchenTasted> tastes,
    List<SampleCooked> cooked,
    List<HarmFound> harms) {
  public Fruit {
    weighings = List.copyOf(weighings);
    tastes = List.copyOf(tastes);
    cooked = List.copyOf(cooked);
    harms = List.copyOf(harms);
  }

  /** Returns what was seen in it, by whoever looked. */
  public Stream<CutFruit> cuts() {
    return Stream.concat(
        tastes.stream().map(KitchenTasted::cut), cooked.stream().map(SampleCooked::cut));
  }

  /** Tells whether it was cut: tasted or cooked. */
  public boolean isCut() {
    return !tastes.isEmpty() || !cooked.isEmpty();
  }

  /** Returns how its seeds looked; where people disagree, flat, for it cannot be called ripe. */
  public Optional<Seeds> seeds() {
    return cuts().flatMap(cut -> Stream.ofNullable(cut.seeds())).max(Seeds::compareTo);
  }

  /** Returns when somebody first looked at its seeds; only of one of which {@link #seeds} tells. */
  Instant seedsSeenAt() {
    return Stream.concat(
            tastes.stream().filter(t -> t.cut().seeds() != null).map(KitchenTasted::at),
            cooked.stream().filter(c -> c.cut().seeds() != null).map(SampleCooked::at))
        .min(Instant::compareTo)
        .orElseThrow();
  }
}
