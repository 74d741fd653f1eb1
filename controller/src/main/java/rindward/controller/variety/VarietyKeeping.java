package rindward.controller.variety;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rindward.controller.journal.Weighed;
import rindward.controller.keeping.Fate;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.Weighing;
import rindward.controller.keeping.WeightLoss;
import rindward.controller.keeping.WeightSeries;

/**
 * Does it keep? By its lots that were neither hurt by cold nor picked unripe, and true to type.
 *
 * @param survival of all their fruits, by days since harvest
 * @param weightLoss how fast they lose weight; empty if none was weighed twice
 * @param leftOut codes of the lots that do not count
 */
public record VarietyKeeping(
    Survival survival, Optional<WeightLoss> weightLoss, List<String> leftOut) {
  private static final double DAY_MILLIS = 86_400_000;

  public VarietyKeeping {
    leftOut = List.copyOf(leftOut);
  }

  /** Follows the lots of one variety. */
  public static VarietyKeeping of(List<Grown> lots, Instant now) {
    List<Fate> fates = new ArrayList<>();
    List<WeightSeries> weights = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (Grown grown : lots) {
      if (!SetApart.keepAsTheyShould(SetApart.of(grown))) {
        leftOut.add(grown.lot().code());
      } else {
        fates.addAll(Fates.of(grown, now));
        weights.addAll(weights(grown));
      }
    }
    return new VarietyKeeping(Survival.of(fates), WeightLoss.of(weights), leftOut);
  }

  /** Returns what is known, a sentence each. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        survival.fruits() == 0 ? "No fruit that counts was followed." : survival.sentence());
    weightLoss.map(WeightLoss::sentence).ifPresent(sentences::add);
    if (!leftOut.isEmpty()) {
      sentences.add(
          "Unripe, off type or hurt by cold, and left out: " + String.join(", ", leftOut) + ".");
    }
    return sentences;
  }

  /** One series a tagged fruit, and one for crates as long as they hold the same count. */
  private static List<WeightSeries> weights(Grown grown) {
    Map<String, List<Weighing>> series = new TreeMap<>();
    for (Weighed weighed : grown.lot().weighings()) {
      String what =
          weighed.fruit() == null ? "crates of " + weighed.count() : "fruit " + weighed.fruit();
      double day =
          Math.max(0, Duration.between(grown.lot().harvestedAt(), weighed.at()).toMillis())
              / DAY_MILLIS;
      series
          .computeIfAbsent(what, w -> new ArrayList<>())
          .add(new Weighing(day, weighed.netGrams()));
    }
    return series.values().stream().map(WeightSeries::new).toList();
  }
}
