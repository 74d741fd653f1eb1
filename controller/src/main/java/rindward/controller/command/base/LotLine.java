package rindward.controller.command.base;

import java.util.Optional;
import java.util.stream.Collectors;
import rindward.controller.crop.Crop;
import rindward.controller.journal.Planted;
import rindward.controller.lot.FruitBudget;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stop;

/** A lot in one line: what it is, where it is, and where its fruits are. */
public final class LotLine {
  private LotLine() {}

  public static String of(Lot lot) {
    return lot.code()
        + "  "
        + (lot.crop() + " " + lot.variety()).strip()
        + (lot.grade() == null ? "" : ", " + lot.grade())
        + ", in "
        + lot.place()
        + ": "
        + fruits(lot.fruits());
  }

  /** Returns the same, with the stop where the lot must not be eaten. */
  public static String of(Lot lot, Optional<Crop> crop) {
    return of(lot)
        + crop.flatMap(type -> Stop.of(lot, type)).map(stop -> ". " + stop.words()).orElse("");
  }

  /** Returns what is planned and has not come in. */
  public static String of(Planted plan) {
    return plan.lot()
        + "  "
        + (plan.crop() + " " + plan.variety()).strip()
        + ", planned in plot "
        + plan.plot()
        + (plan.check() ? ", the check" : "");
  }

  /** Returns the fruits, saying nothing of what is not there. */
  static String fruits(FruitBudget fruits) {
    StringBuilder line = new StringBuilder();
    line.append(fruits.sound()).append(" of ").append(fruits.harvested()).append(" sound");
    if (!fruits.reserved().isEmpty()) {
      line.append(
          fruits.reserved().entrySet().stream()
              .map(e -> e.getValue() + " for " + e.getKey())
              .collect(Collectors.joining(", ", " (set aside: ", ")")));
    }
    count(line, fruits.used(), "used");
    count(line, fruits.lost(), "lost");
    count(line, fruits.unaccounted(), "unaccounted");
    return line.toString();
  }

  private static void count(StringBuilder line, int count, String word) {
    if (count != 0) {
      line.append(", ").append(count).append(' ').append(word);
    }
  }
}
