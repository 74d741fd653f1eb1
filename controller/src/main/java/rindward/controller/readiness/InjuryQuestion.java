package rindward.controller.readiness;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.Chilling.Dose;
import rindward.controller.crop.Chilling.Harm;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Days;
import rindward.controller.ledger.Cold;
import rindward.controller.readiness.Verdict.Expected;
import rindward.hardware.Thousandths;

/** Did cold hurt it? */
final class InjuryQuestion implements Question {
  /** After warming, injured fruit decays in this many days; from memory. */
  private static final Days DECAYS_AFTER_WARMING = new Days(10, 14);

  private static final Duration HOUR = Duration.ofHours(1);

  @Override
  public Optional<Verdict> ask(LotCase lot) {
    Cold cold = lot.lived().cold();
    List<String> reasons = new ArrayList<>();
    FrostDamage.sentence(lot).ifPresent(reasons::add);
    if (cold.frozenMillis() >= HOUR.toMillis()) {
      reasons.add("The fruit froze: " + hours(cold.frozenMillis()) + " at or below freezing.");
    }
    if (cold.isInjured()) {
      reasons.add(sentence(lot));
      reasons.add(
          String.format(
              Locale.ROOT,
              "The fruit was below %.1f C for %s, down to about %.1f C, reckoned from the air,"
                  + " not measured in the fruit.",
              Thousandths.toDouble(threshold(lot)),
              hours(cold.fruitBelowMillis()),
              Thousandths.toDouble(cold.coldestFruitMilliC())));
    }
    if (reasons.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        lot.verdict(
            State.INJURED,
            decay(lot),
            reasons,
            "Use it first; cut one before you trust the others."));
  }

  private static Optional<Expected> decay(LotCase lot) {
    Instant warmed = lot.lived().cold().lastBelow();
    return warmed == null
        ? Optional.empty()
        : lot.expectSince("decaying, if it stays warm", warmed, DECAYS_AFTER_WARMING);
  }

  private static String sentence(LotCase lot) {
    return lot.crop().keeping().chilling().map(Chilling::doses).orElse(List.of()).stream()
        .map(Cited::value)
        .filter(dose -> dose.harm() == Harm.INJURES)
        .map(Dose::sentence)
        .findFirst()
        .orElse("It was too cold for too long.");
  }

  private static int threshold(LotCase lot) {
    return lot.crop().keeping().chilling().map(c -> c.threshold().value()).orElse(0);
  }

  static String hours(long millis) {
    long hours = millis / HOUR.toMillis();
    return hours < 48 ? hours + " h" : hours / 24 + " days";
  }
}
