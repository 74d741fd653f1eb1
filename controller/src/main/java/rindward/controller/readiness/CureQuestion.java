package rindward.controller.readiness;

import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Days;
import rindward.controller.crop.RateCurve;
import rindward.controller.ledger.CurePace;
import rindward.controller.readiness.Ripeness.Level;
import rindward.controller.readiness.Verdict.Expected;

/**
 * Does it still cure? Only what the air of the last day brought on does; when it will be done
 * follows from that pace, and from nothing else.
 */
final class CureQuestion implements Question {
  /** A pace at which a cure takes more than so many times as long as usual is none. */
  private static final int TOO_FAR = 4;

  @Override
  public Optional<Verdict> ask(LotCase lot) {
    if (lot.lived().cureEnd().isPresent()) {
      return Optional.empty();
    }
    Cure cure = lot.crop().cure().orElseThrow();
    Optional<CurePace> pace = lot.lived().pace().filter(CurePace::isKnown);
    if (pace.isEmpty()) {
      boolean isProbed = lot.lived().pace().filter(CurePace::isProbed).isPresent();
      return Optional.of(
          verdict(lot, State.CURE_NOT_KNOWN, Optional.empty(), cure)
              .in(isProbed ? "nothing was measured here for a day" : "no probe here"));
    }
    long most = (long) TOO_FAR * cure.days().value().high();
    if (pace.get().daysFor(RateCurve.WHOLE).filter(days -> days <= most).isEmpty()) {
      return Optional.of(
          verdict(lot, State.NOT_CURING, Optional.empty(), cure)
              .in(CureWords.hindrance(cure, pace.get())));
    }
    return Optional.of(verdict(lot, State.CURING, expected(lot, cure, pace.get()), cure));
  }

  private static Verdict verdict(LotCase lot, State state, Optional<Expected> expected, Cure cure) {
    List<String> reasons = CureWords.goingOn(lot, cure);
    Ripeness ripeness = Ripeness.of(lot.lot(), lot.crop());
    if (ripeness.level() != Level.RIPE) {
      reasons.addAll(ripeness.reasons());
    }
    String seen = "if you see that " + lowerFirst(cure.confirmation().value());
    return lot.verdict(
        state,
        expected,
        reasons,
        state == State.CURING
            ? "It is done sooner " + seen
            : CureWords.whenMoved(lot, cure) + " Or it is done " + seen);
  }

  private static Optional<Expected> expected(LotCase lot, Cure cure, CurePace pace) {
    Days days = cure.days().value();
    long left = RateCurve.WHOLE - lot.lived().account().cureProgress().measured();
    return pace.daysFor(left)
        .flatMap(
            low ->
                lot.expect(
                    "cured, if it stays as it is",
                    low,
                    pace.daysFor(left * days.high() / days.low()).orElseThrow()));
  }

  private static String lowerFirst(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
