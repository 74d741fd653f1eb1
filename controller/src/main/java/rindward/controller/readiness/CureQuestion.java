package rindward.controller.readiness;

import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.readiness.Ripeness.Level;

/** Does it still cure? */
final class CureQuestion implements Question {
  @Override
  public Optional<Verdict> ask(LotCase lot) {
    if (lot.lived().cureEnd().isPresent()) {
      return Optional.empty();
    }
    Cure cure = lot.crop().cure().orElseThrow();
    Days days = cure.days().value();
    long left = 100 - CureWords.percent(lot);
    return Optional.of(
        lot.verdict(
            State.CURING,
            lot.expect(
                "cured, if it stays warm",
                (days.low() * left + 99) / 100,
                (days.high() * left + 99) / 100),
            reasons(lot, cure),
            "It is done sooner if you see that " + lowerFirst(cure.confirmation().value())));
  }

  private static List<String> reasons(LotCase lot, Cure cure) {
    List<String> reasons = CureWords.goingOn(lot, cure);
    Ripeness ripeness = Ripeness.of(lot.lot(), lot.crop());
    if (ripeness.level() != Level.RIPE) {
      reasons.addAll(ripeness.reasons());
    }
    return reasons;
  }

  private static String lowerFirst(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
