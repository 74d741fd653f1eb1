package rindward.controller.readiness;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Days;
import rindward.controller.crop.EatingPhase;
import rindward.controller.crop.EatingPhase.Since;
import rindward.controller.ledger.CureEnd;

/** How does it eat now? The last question: it always has an answer. */
final class FlavourQuestion implements Question {
  @Override
  public Optional<Verdict> ask(LotCase lot) {
    List<EatingPhase> phases = phases(lot);
    List<String> reasons = new ArrayList<>();
    lot.olderThanAnyWatched().ifPresent(reasons::add);
    nightDip(lot).ifPresent(reasons::add);
    Optional<Verdict> own = OwnFlavour.verdict(lot, reasons);
    if (own.isPresent()) {
      return own;
    }
    if (phases.isEmpty()) {
      Days life = lot.life();
      return Optional.of(
          lot.verdict(
              State.READY,
              lot.own().isLifeOpen()
                  ? Optional.empty()
                  : lot.expect(
                      "at the end of its life", life.low() - lot.age(), life.high() - lot.age()),
              reasons,
              "Taste it: the guide knows no better time for " + lot.crop().name() + "."));
    }
    EatingPhase first = phases.get(0);
    boolean restsFirst = phases.size() > 1 && first.begins().high() == 0;
    EatingPhase good = restsFirst ? phases.get(1) : first;
    if (day(lot, good) < good.begins().low()) {
      reasons.add(0, restsFirst ? first.sentence() : "Its flavour is still rising.");
      return Optional.of(
          lot.verdict(
              State.RESTING,
              lot.expectSince(good.name(), start(lot, good), good.begins()),
              reasons,
              "It may be eaten before; it is only not yet at its best."));
    }
    List<EatingPhase> now =
        phases.stream()
            .filter(p -> p.begins().low() <= day(lot, p) && day(lot, p) < p.ends().high())
            .toList();
    now.stream().map(EatingPhase::sentence).forEach(reasons::add);
    EatingPhase last = now.isEmpty() ? good : now.get(now.size() - 1);
    Verdict ready =
        lot.verdict(
            State.READY,
            lot.expectSince("past that", start(lot, last), last.ends()),
            reasons,
            now.size() > 1
                ? "The guide cannot tell which of the two it is by now: taste one."
                : "Taste one: your own tongue is the better guide.");
    return Optional.of(
        now.isEmpty()
            ? ready
            : ready.in(String.join(" or ", now.stream().map(EatingPhase::name).toList())));
  }

  /** Returns the sentence that every window has ended, if the type has windows and they have. */
  static Optional<String> over(LotCase lot) {
    List<EatingPhase> phases = phases(lot);
    if (phases.isEmpty()) {
      return Optional.empty();
    }
    EatingPhase last = phases.get(phases.size() - 1);
    return day(lot, last) >= last.ends().high()
        ? Optional.of(
            "Its last good time, '"
                + last.name()
                + "', ended after "
                + last.ends().low()
                + " to "
                + last.ends().high()
                + " days; today is day "
                + day(lot, last)
                + ".")
        : Optional.empty();
  }

  /** The air was cold and the fruit did not follow: a note, and no harm. */
  private static Optional<String> nightDip(LotCase lot) {
    boolean dipped =
        lot.lived().cold().airBelowMillis() > 0 && lot.lived().cold().fruitBelowMillis() == 0;
    return dipped
        ? Optional.of(
            "The air was too cold for "
                + InjuryQuestion.hours(lot.lived().cold().airBelowMillis())
                + ", but not long enough to chill the fruit.")
        : Optional.empty();
  }

  private static List<EatingPhase> phases(LotCase lot) {
    return lot.crop().phases().stream().map(Cited::value).toList();
  }

  private static long day(LotCase lot, EatingPhase phase) {
    return Duration.between(start(lot, phase), lot.now()).toDays();
  }

  private static Instant start(LotCase lot, EatingPhase phase) {
    return phase.since() == Since.HARVEST
        ? lot.lot().harvestedAt()
        : lot.lived().cureEnd().map(CureEnd::at).orElse(lot.lot().harvestedAt());
  }
}
