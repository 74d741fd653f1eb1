package rindward.controller.readiness;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;

/** The verdict on a lot: the first question that has an answer. */
public final class Readiness {
  private static final List<Question> QUESTIONS =
      List.of(
          new HarmQuestion(),
          Readiness::nothingLeft,
          new UnripeQuestion(),
          new InjuryQuestion(),
          new CureQuestion(),
          new LifeQuestion(),
          new FlavourQuestion());

  private Readiness() {}

  /** Returns what to do with a lot now, by the crop guide alone. */
  public static Verdict of(Lot lot, Crop crop, LotExposure lived, Instant now) {
    return of(lot, crop, lived, OwnRecord.NONE, now);
  }

  /**
   * Returns what to do with a lot now.
   *
   * @param lived what the air has done to it until {@code now}
   * @param own what the grower's own fruits of its variety have shown
   */
  public static Verdict of(Lot lot, Crop crop, LotExposure lived, OwnRecord own, Instant now) {
    LotCase asked = new LotCase(lot, crop, lived, own, now);
    return QUESTIONS.stream()
        .map(question -> question.ask(asked))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Verdict> nothingLeft(LotCase lot) {
    return lot.lot().fruits().sound() > 0
        ? Optional.empty()
        : Optional.of(
            lot.verdict(
                State.NOTHING_LEFT,
                Optional.empty(),
                List.of("No sound fruit is left."),
                "A recount would change it."));
  }
}
