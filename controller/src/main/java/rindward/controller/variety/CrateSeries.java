package rindward.controller.variety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rindward.controller.keeping.Weighing;
import rindward.controller.keeping.WeightSeries;

/**
 * Crates carry no name, so a crate is known by how many fruits it holds and by its weight: what is
 * weighed later is the same crate only if that weight may have become this one. Two crates put into
 * one series would lose and gain a hundred percent a month.
 */
final class CrateSeries {
  /** Scales and wet crates differ by so much from one weighing to the next. Common practice. */
  private static final double SCALE_PCT = 2;

  /** No sound crop of these loses more a day, not even while it cures. Common practice. */
  private static final double MOST_PCT_A_DAY = 0.5;

  private final List<Crate> crates = new ArrayList<>();

  /** One crate as it was weighed until now. */
  private record Crate(int count, List<Weighing> weighings) {
    Weighing last() {
      return weighings.get(weighings.size() - 1);
    }

    boolean mayBecome(int fruits, Weighing next) {
      double days = next.day() - last().day();
      double lossPct = 100 * (1 - next.grams() / last().grams());
      return fruits == count
          && days > 0
          && lossPct > -SCALE_PCT
          && lossPct < SCALE_PCT + MOST_PCT_A_DAY * days;
    }

    double change(Weighing next) {
      return Math.abs(next.grams() - last().grams());
    }
  }

  /** Adds a weighing, not earlier than those before it. */
  void add(int count, Weighing weighing) {
    Optional<Crate> same =
        crates.stream()
            .filter(crate -> crate.mayBecome(count, weighing))
            .min(Comparator.comparingDouble(crate -> crate.change(weighing)));
    same.ifPresentOrElse(
        crate -> crate.weighings().add(weighing),
        () -> crates.add(new Crate(count, new ArrayList<>(List.of(weighing)))));
  }

  List<WeightSeries> all() {
    return crates.stream().map(crate -> new WeightSeries(crate.weighings())).toList();
  }
}
