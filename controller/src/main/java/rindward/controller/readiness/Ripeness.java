package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Days;
import rindward.controller.crop.Maturity;
import rindward.controller.crop.Maturity.Ripening;
import rindward.controller.journal.Grade;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.lot.Lot;

/**
 * How ripe a lot was when it was picked, from everything that was noted. Days counted from a
 * written date come before every sign; of signs that agree the narrowest range is taken. What was
 * seen in cut fruits is true of these; of their lot it tells a share, and how far it may be off.
 *
 * @param level what to make of it
 * @param share by the fruits that were cut; empty if none was looked into
 * @param reasons each one sentence
 */
public record Ripeness(Level level, Optional<RipeShare> share, List<String> reasons) {

  /** How ripe. */
  public enum Level {
    RIPE,
    /** Old enough to ripen off the vine. */
    RIPENS,
    /** Not known: it says neither that it was ripe nor that it was not. */
    DOUBTFUL,
    /** Most of it was unripe, beyond doubt. */
    NEVER
  }

  public Ripeness {
    reasons = List.copyOf(reasons);
  }

  /** Judges a lot by everything noted of it; a type that is not told by fruit set is ripe. */
  public static Ripeness of(Lot lot, Crop crop) {
    Optional<Maturity> maturity = crop.maturity();
    List<String> reasons = new ArrayList<>();
    if (maturity.isEmpty()) {
      return new Ripeness(Level.RIPE, Optional.empty(), reasons);
    }
    Optional<Days> days = days(lot.ripeness());
    Optional<RipeShare> share = share(lot);
    days.ifPresent(d -> reasons.add(age(d, maturity.get(), crop)));
    share.ifPresent(seen -> reasons.add(seen.sentence()));
    if (lot.ripeness().stream().anyMatch(note -> note.sign() == RipenessSign.VINES_DEAD)) {
      reasons.add("The vines died early, which leaves fruit unripe.");
    }
    Level level = level(lot, maturity.get(), days, share);
    if (reasons.isEmpty() && level != Level.RIPE) {
      reasons.add("It looked " + lot.grade() + " when it was picked, and no more is known.");
    }
    return new Ripeness(level, share, reasons);
  }

  private static Level level(
      Lot lot, Maturity maturity, Optional<Days> days, Optional<RipeShare> share) {
    Optional<Days> notBefore = maturity.ripening().map(Ripening::notBefore).map(c -> c.value());
    int least = notBefore.map(Days::low).orElse(maturity.ripe().value().low());
    int safe = notBefore.map(Days::high).orElse(maturity.ripe().value().low());
    if (share.filter(RipeShare::isMostlyRipe).isPresent()) {
      return Level.RIPE;
    }
    boolean tooYoung = days.isPresent() && days.get().high() < least;
    // Too young by the calendar to ripen for sure, and the only ones looked into had not.
    boolean bothSay =
        days.isPresent()
            && days.get().high() < safe
            && share.filter(seen -> seen.ripe() == 0).isPresent();
    if (tooYoung || bothSay || share.filter(RipeShare::isMostlyUnripe).isPresent()) {
      return Level.NEVER;
    }
    if (share.filter(RipeShare::hasUnripe).isPresent()) {
      return Level.DOUBTFUL;
    }
    if (days.isPresent()) {
      if (days.get().low() >= maturity.ripe().value().low()) {
        return Level.RIPE;
      }
      if (lot.grade() == Grade.RIPE && days.get().high() >= maturity.ripe().value().low()) {
        return Level.RIPE;
      }
      return days.get().low() >= safe ? Level.RIPENS : Level.DOUBTFUL;
    }
    boolean vinesDead =
        lot.ripeness().stream().anyMatch(note -> note.sign() == RipenessSign.VINES_DEAD);
    boolean looksUnripe = lot.grade() == Grade.DOUBTFUL || lot.grade() == Grade.GREEN;
    return looksUnripe || vinesDead && lot.grade() == null ? Level.DOUBTFUL : Level.RIPE;
  }

  /** Returns the days after fruit set at picking; empty if nothing tells. */
  private static Optional<Days> days(List<RipenessNoted> notes) {
    List<RipenessNoted> dated = notes.stream().filter(n -> n.sign().isDated()).toList();
    List<RipenessNoted> signs =
        notes.stream()
            .filter(n -> !n.sign().isSeenInside() && n.sign() != RipenessSign.VINES_DEAD)
            .toList();
    List<RipenessNoted> best = dated.isEmpty() ? signs : dated;
    if (best.isEmpty()) {
      return Optional.empty();
    }
    int low = best.stream().mapToInt(RipenessNoted::lowDays).max().orElseThrow();
    int high = best.stream().mapToInt(RipenessNoted::highDays).min().orElseThrow();
    // Signs that contradict each other, or fruits of several ages: the whole span.
    return low <= high
        ? Optional.of(new Days(low, high))
        : Optional.of(
            new Days(
                best.stream().mapToInt(RipenessNoted::lowDays).min().orElseThrow(),
                best.stream().mapToInt(RipenessNoted::highDays).max().orElseThrow()));
  }

  private static Optional<RipeShare> share(Lot lot) {
    int unripe = cut(lot, RipenessSign::isUnripeInside);
    int ripe = cut(lot, sign -> sign.isSeenInside() && !sign.isUnripeInside());
    return ripe + unripe == 0
        ? Optional.empty()
        : Optional.of(new RipeShare(ripe, ripe + unripe, lot.count()));
  }

  /** Returns in how many fruits such a sign was seen; where no number was said, in one. */
  private static int cut(Lot lot, Predicate<RipenessSign> which) {
    return lot.ripeness().stream()
        .filter(note -> which.test(note.sign()))
        .mapToInt(note -> Math.max(1, note.fruits()))
        .max()
        .orElse(0);
  }

  private static String age(Days days, Maturity maturity, Crop crop) {
    Days ripe = maturity.ripe().value();
    return "It was picked "
        + (days.low() == days.high() ? days.low() : days.low() + " to " + days.high())
        + " days after fruit set; "
        + crop.name()
        + " is ripe from "
        + ripe.low()
        + " to "
        + ripe.high()
        + ".";
  }
}
