package rindward.controller.variety;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import rindward.controller.journal.Weighed;
import rindward.controller.keeping.KeepingUntil;
import rindward.controller.keeping.KeptLot;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.Weighing;
import rindward.controller.keeping.WeightLoss;
import rindward.controller.keeping.WeightSeries;

/**
 * Does it keep? By its lots that were neither hurt by cold nor picked unripe, and true to type.
 *
 * @param survival of all their fruits, by days since harvest
 * @param lots the same by lots, each beside the others of its season and last room
 * @param weightLoss how fast they lose weight; empty if none was weighed twice
 * @param leftOut codes of the lots that do not count
 */
public record VarietyKeeping(
    Survival survival, List<KeptLot> lots, Optional<WeightLoss> weightLoss, List<String> leftOut) {
  private static final double DAY_MILLIS = 86_400_000;

  public VarietyKeeping {
    lots = List.copyOf(lots);
    leftOut = List.copyOf(leftOut);
  }

  /** Follows the lots of one variety. */
  public static VarietyKeeping of(List<Grown> lots, Instant now) {
    List<KeptLot> kept = new ArrayList<>();
    List<WeightSeries> weights = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (Grown grown : lots) {
      if (!SetApart.keepAsTheyShould(SetApart.of(grown))) {
        leftOut.add(grown.lot().code());
      } else {
        kept.add(new KeptLot(grown.season() + " " + grown.lot().place(), Fates.of(grown, now)));
        weights.addAll(weights(grown));
      }
    }
    return new VarietyKeeping(
        Survival.of(kept.stream().flatMap(lot -> lot.fates().stream()).toList()),
        kept,
        WeightLoss.of(weights),
        leftOut);
  }

  /**
   * Returns which share keeps until a day since harvest; empty if no lot was watched until then.
   */
  public Optional<KeepingUntil> until(int day) {
    return KeepingUntil.of(lots, day);
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

  /** One series a tagged fruit and one a crate. */
  private static List<WeightSeries> weights(Grown grown) {
    Map<String, List<Weighing>> fruits = new TreeMap<>();
    CrateSeries crates = new CrateSeries();
    for (Weighed weighed : grown.lot().weighings()) {
      double day =
          Math.max(0, Duration.between(grown.lot().harvestedAt(), weighed.at()).toMillis())
              / DAY_MILLIS;
      Weighing weighing = new Weighing(day, weighed.netGrams());
      if (weighed.fruit() == null) {
        crates.add(weighed.count(), weighing);
      } else {
        fruits.computeIfAbsent(weighed.fruit(), tag -> new ArrayList<>()).add(weighing);
      }
    }
    return Stream.concat(fruits.values().stream().map(WeightSeries::new), crates.all().stream())
        .toList();
  }
}
