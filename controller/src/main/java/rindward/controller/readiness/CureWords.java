package rindward.controller.readiness;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.crop.Limits;
import rindward.controller.crop.RateCurve;
import rindward.controller.ledger.CureEnd;
import rindward.controller.ledger.CurePace;

/** What is said of a lot's cure: how it ended, and what dry air cost. */
final class CureWords {
  /** Less than half a point of weight is not worth a sentence. */
  private static final int WORTH_TELLING_MILLI_PCT = 500;

  private CureWords() {}

  /** Returns how far the cure is, in whole percent. */
  static long percent(LotCase lot) {
    return lot.lived().account().cureProgress().measured() / (RateCurve.WHOLE / 100);
  }

  /** Returns how the cure ended; empty while it goes on. */
  static Optional<String> told(LotCase lot) {
    return lot.lived()
        .cureEnd()
        .map(end -> ended(lot, end) + dry(lot).map(s -> " " + s).orElse(""));
  }

  private static String ended(LotCase lot, CureEnd end) {
    long day = Duration.between(lot.lot().harvestedAt(), end.at()).toDays();
    return switch (end.how()) {
      case NOT_NEEDED -> lot.crop().noCure().map(c -> c.value()).orElse("It needs no cure.");
      case MEASURED -> "Cured " + day + " days after harvest, as measured.";
      case TOLD ->
          "Cured "
              + day
              + " days after harvest, as told: "
              + lot.lot().attested().map(a -> a.text()).orElse("")
              + ".";
      case MOVED_ON ->
          "It had " + percent(lot) + " % of a cure; " + lot.crop().name() + " does well without.";
      case WAITED_LONG ->
          "No whole cure was ever measured ("
              + percent(lot)
              + " %); it is taken as cured after the usual "
              + day
              + " days.";
    };
  }

  /** Returns what dry air cost while it cured, where it is worth telling. */
  static Optional<String> dry(LotCase lot) {
    int cost = lot.lived().dryCostMilliPct();
    if (cost < WORTH_TELLING_MILLI_PCT) {
      return Optional.empty();
    }
    long points = (cost + 500L) / 1000;
    return Optional.of(
        "Dry air cost about "
            + points
            + (points == 1 ? " point" : " points")
            + " of weight more; the cure is not affected.");
  }

  /** Returns why the air of the last day cures nothing. */
  static String hindrance(Cure cure, CurePace pace) {
    Limits needs = cure.temperature().value();
    if (2 * pace.gatedMillis() >= pace.measuredMillis() || needs.contains(pace.meanMilliC())) {
      return "too damp or too dry (needs " + whole(cure.humidity().value()) + " %)";
    }
    return pace.meanMilliC() < needs.low()
        ? "too cold (needs " + number(needs.low()) + " C)"
        : "too warm (needs " + whole(needs) + " C)";
  }

  /** Returns what a cure waits for, and how long it then takes. */
  static String whenMoved(LotCase lot, Cure cure) {
    Days days = cure.days().value();
    long left = 100 - percent(lot);
    return "It is cured "
        + new Days(
                Math.toIntExact((days.low() * left + 99) / 100),
                Math.toIntExact((days.high() * left + 99) / 100))
            .words()
        + " days after it is moved to where a probe shows "
        + whole(cure.temperature().value())
        + " C.";
  }

  private static String whole(Limits limits) {
    return number(limits.low()) + " to " + number(limits.high());
  }

  private static String number(int thousandths) {
    return String.format(Locale.ROOT, "%.1f", thousandths / 1000.0).replace(".0", "");
  }

  /** Returns the reasons for a cure that goes on. */
  static List<String> goingOn(LotCase lot, Cure cure) {
    List<String> reasons = new ArrayList<>();
    boolean moved = lot.lot().stays().size() > 1;
    reasons.add(
        moved
            ? "It was moved at " + percent(lot) + " % of a cure; it needs a whole one."
            : "It has " + percent(lot) + " % of a cure.");
    dry(lot).ifPresent(reasons::add);
    if (cure.movingAir()) {
      reasons.add("It cures dry, in moving air: " + cure.confirmation().value());
    }
    return reasons;
  }
}
