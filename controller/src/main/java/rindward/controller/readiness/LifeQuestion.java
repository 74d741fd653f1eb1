package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Chilling.Dose;
import rindward.controller.crop.Days;

/**
 * Is its time running out? A life and a window are ranges, not safety limits, so the middle of the
 * life counts, and the end of one on paper is only a reason to look. A life that ended only because
 * nobody watched longer has no middle.
 */
final class LifeQuestion implements Question {
  /** A fruit whose life cold has shortened is eaten within weeks; common practice. */
  private static final Days WEEKS = new Days(14, 28);

  @Override
  public Optional<Verdict> ask(LotCase lot) {
    Days life = lot.life();
    long age = lot.age();
    List<String> reasons = new ArrayList<>();
    lot.failures().ifPresent(reasons::add);
    lot.lived().cold().shortening().stream().map(Dose::sentence).forEach(reasons::add);
    Optional<String> past = OwnFlavour.past(lot);
    past.ifPresent(reasons::add);
    boolean isOpen = lot.own().isLifeOpen();
    boolean isOver = !isOpen && age >= middle(life);
    boolean isPastIt = !isOpen && age > life.high();
    lot.olderThanAnyWatched().ifPresent(reasons::add);
    if (isOver) {
      reasons.add(
          "It has spent "
              + age
              + " days of a life of "
              + life.words()
              + lot.own().lifeWords()
              + ".");
    }
    if (lot.isFailing() && isPastIt) {
      return Optional.of(
          lot.verdict(
              State.PAST,
              Optional.empty(),
              reasons,
              "Only a good one, cut today, says otherwise."));
    }
    if (lot.isFailing() || !lot.lived().cold().shortening().isEmpty()) {
      return eatFirst(lot, reasons, WEEKS);
    }
    if (isPastIt) {
      return checkOne(lot, reasons);
    }
    if (isOver) {
      return eatFirst(lot, reasons, left(lot, life));
    }
    if (lot.ownWindow().isPresent()) {
      return past.isPresent() ? eatFirst(lot, reasons, left(lot, life)) : Optional.empty();
    }
    Optional<String> over = FlavourQuestion.over(lot);
    over.ifPresent(reasons::add);
    return over.isPresent() ? checkOne(lot, reasons) : Optional.empty();
  }

  /** Returns the days of life after which a lot is eaten before younger ones. */
  static long middle(Days life) {
    return (life.low() + (long) life.high()) / 2;
  }

  private static Days left(LotCase lot, Days life) {
    return new Days(
        (int) Math.max(0, life.low() - lot.age()), (int) Math.max(0, life.high() - lot.age()));
  }

  private static Optional<Verdict> eatFirst(LotCase lot, List<String> reasons, Days left) {
    return Optional.of(
        lot.verdict(
            State.EAT_FIRST,
            lot.olderThanAnyWatched().isPresent()
                ? Optional.empty()
                : lot.expect("no longer good", left.low(), left.high()),
            reasons,
            "A sound, good one, cut today, gives the others more time."));
  }

  private static Optional<Verdict> checkOne(LotCase lot, List<String> reasons) {
    reasons.add(
        "That is on paper: "
            + lot.lot().fruits().sound()
            + " of "
            + lot.lot().count()
            + " are sound, and nothing says they are bad.");
    return Optional.of(
        lot.verdict(
            State.CHECK_ONE, Optional.empty(), reasons, "Cut one and taste it: you will know."));
  }
}
