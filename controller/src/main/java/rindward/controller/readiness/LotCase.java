package rindward.controller.readiness;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Days;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stop;
import rindward.controller.readiness.Verdict.Expected;
import rindward.controller.tasting.analysis.EatingWindow;

/**
 * All that is known of a lot when its verdict is asked for.
 *
 * @param lived what the air has done to it until {@code now}
 * @param own what the grower's own fruits of its variety have shown
 */
record LotCase(Lot lot, Crop crop, LotExposure lived, OwnRecord own, Instant now) {
  private static final Duration DAY = Duration.ofDays(1);

  /** A fruit that failed longer ago says little of those that are left; common practice. */
  private static final Duration RECENTLY = Duration.ofDays(30);

  /** Returns whole days since harvest. */
  long daysSinceHarvest() {
    return Duration.between(lot.harvestedAt(), now).toDays();
  }

  /** Returns the life spent since it began to keep, in whole days at the reference temperature. */
  long age() {
    return lived.spentMillis() / DAY.toMillis();
  }

  /** Returns the days after which its life is over: the grower's own figure before the guide's. */
  Days life() {
    return own.life().flatMap(OwnLife::days).orElse(guideLife());
  }

  Days guideLife() {
    return crop.keeping().life().value();
  }

  /**
   * Returns the sentence that its age is one that no fruit of its variety was ever watched at: its
   * life is then neither spent nor going to end on any day that is known.
   */
  Optional<String> olderThanAnyWatched() {
    return own.isLifeOpen() && age() > life().high()
        ? Optional.of(
            "No fruit of its variety was watched for longer than "
                + life().high()
                + " days of life.")
        : Optional.empty();
  }

  /** Returns the grower's own eating window, if it stands before the guide's. */
  Optional<EatingWindow> ownWindow() {
    return own.window().filter(EatingWindow::isEnough);
  }

  /** Returns how many fruits failed by themselves lately. */
  int failedLately() {
    return lot.culls().stream()
        .filter(cull -> cull.cause().isDecay() && cull.at().isAfter(now.minus(RECENTLY)))
        .mapToInt(Culled::count)
        .sum();
  }

  /** Tells whether it is failing: a fifth of what was there failed lately; common practice. */
  boolean isFailing() {
    int failed = failedLately();
    return failed > 0 && failed * 5 >= lot.fruits().sound() + failed;
  }

  /** Returns the sentence about fruits that failed lately, if any did. */
  Optional<String> failures() {
    int failed = failedLately();
    if (failed == 0) {
      return Optional.empty();
    }
    List<String> causes =
        lot.culls().stream()
            .filter(cull -> cull.cause().isDecay() && cull.at().isAfter(now.minus(RECENTLY)))
            .map(Culled::cause)
            .distinct()
            .map(Cause::toString)
            .toList();
    return Optional.of(
        failed
            + " of "
            + (lot.fruits().sound() + failed)
            + " failed in the last 30 days ("
            + String.join(", ", causes)
            + ").");
  }

  /** Returns an expectation so many days from now. */
  Optional<Expected> expect(String what, long fromDays, long toDays) {
    return Optional.of(
        new Expected(
            what,
            now.plus(DAY.multipliedBy(Math.max(0, fromDays))),
            now.plus(DAY.multipliedBy(Math.max(0, toDays)))));
  }

  /** Returns when, from now, a number of days since {@code since} will have passed. */
  Optional<Expected> expectSince(String what, Instant since, Days days) {
    long passed = Duration.between(since, now).toDays();
    return expect(what, days.low() - passed, days.high() - passed);
  }

  /** Returns a verdict about it. */
  Verdict verdict(
      State state, Optional<Expected> expected, List<String> reasons, String wouldChange) {
    List<String> all = new ArrayList<>();
    if (state != State.STOPPED) {
      all.addAll(Stop.besideSisters(lot, crop));
    }
    all.addAll(reasons);
    all.addAll(Stop.ofFruits(lot, crop));
    CureWords.told(this).ifPresent(all::add);
    return new Verdict(
        state,
        Optional.empty(),
        expected,
        all,
        wouldChange,
        state == State.CURE_NOT_KNOWN ? Sureness.ASSUMED : Sureness.of(lived),
        Yardstick.of(this));
  }
}
