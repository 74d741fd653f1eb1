package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Days;
import rindward.controller.tasting.analysis.EatingWindow;

/**
 * How a lot eats by what the grower tasted of its variety, where that is enough to go by. What was
 * never tasted stays open: a window that ends only because nobody tasted later is not over.
 */
final class OwnFlavour {
  /** The curve looks three weeks to either side, and can place an end no better. */
  private static final int BLUR_DAYS = 21;

  private static final String WOULD_CHANGE = "More tastes, older and younger, make it surer.";

  private OwnFlavour() {}

  /** Returns the sentence that it was liked better when it was younger, if so. */
  static Optional<String> past(LotCase lot) {
    return lot.ownWindow()
        .filter(window -> window.isEndSeen() && lot.daysSinceHarvest() > window.to())
        .map(
            window ->
                "By your own tastes it was best until day "
                    + window.to()
                    + "; today is day "
                    + lot.daysSinceHarvest()
                    + ".");
  }

  /** Returns how it eats now; empty if there is no window, or if it says nothing of this age. */
  static Optional<Verdict> verdict(LotCase lot, List<String> besides) {
    return lot.ownWindow().flatMap(window -> verdict(lot, window, besides));
  }

  private static Optional<Verdict> verdict(LotCase lot, EatingWindow window, List<String> besides) {
    long day = lot.daysSinceHarvest();
    List<String> reasons = new ArrayList<>();
    if (day < window.from()) {
      if (!window.isStartSeen()) {
        return Optional.empty();
      }
      reasons.add(
          "By your own tastes it is best from day "
              + window.from()
              + "; today is day "
              + day
              + ".");
      reasons.addAll(besides);
      return Optional.of(
          lot.verdict(
              State.RESTING,
              lot.expectSince(
                  "best, by your own tastes",
                  lot.lot().harvestedAt(),
                  new Days(Math.max(0, window.from() - BLUR_DAYS), window.from())),
              reasons,
              "It may be eaten before; it is only not yet at its best."));
    }
    if (day > window.to()) {
      reasons.add("Nobody has tasted it later than day " + window.to() + ", and it was good then.");
      reasons.addAll(besides);
      return Optional.of(
          lot.verdict(State.READY, Optional.empty(), reasons, "Taste one: nobody knows this age."));
    }
    reasons.add(
        "By your own tastes this is its best time: day "
            + window.from()
            + " to "
            + window.to()
            + "; today is day "
            + day
            + ".");
    reasons.addAll(besides);
    Verdict ready =
        lot.verdict(
            State.READY,
            window.isEndSeen()
                ? lot.expectSince(
                    "past its best",
                    lot.lot().harvestedAt(),
                    new Days(window.to(), window.to() + BLUR_DAYS))
                : Optional.empty(),
            reasons,
            WOULD_CHANGE);
    return Optional.of(ready.in("at its best"));
  }
}
