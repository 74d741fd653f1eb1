package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Days;
import rindward.controller.crop.Maturity;
import rindward.controller.journal.FrostNoted;
import rindward.controller.readiness.Ripeness.Level;

/** Was it ripe when it was picked? While it cures there is time to find out. */
final class UnripeQuestion implements Question {
  /** So many fruits, all alike, are the fewest that tell what most of a lot is. */
  private static final int FIRST_ALIKE = 4;

  @Override
  public Optional<Verdict> ask(LotCase lot) {
    Ripeness ripeness = Ripeness.of(lot.lot(), lot.crop());
    List<String> reasons = new ArrayList<>(ripeness.reasons());
    lot.lot().frosts().stream()
        .filter(frost -> !FrostDamage.hurt(frost))
        .findFirst()
        .ifPresent(frost -> reasons.add(notToBlame(frost)));
    if (lot.lived().cureEnd().isEmpty() && ripeness.level() != Level.NEVER) {
      return Optional.empty();
    }
    return switch (ripeness.level()) {
      case RIPE -> Optional.empty();
      case NEVER ->
          Optional.of(
              lot.verdict(
                  State.UNLIKELY_EVER_GOOD,
                  Optional.empty(),
                  reasons,
                  "Only cut fruits with full seeds would change it."));
      case DOUBTFUL ->
          Optional.of(
              lot.verdict(State.CHECK_ONE, Optional.empty(), doubt(reasons), cutMore(ripeness)));
      case RIPENS -> ripening(lot, ripeness, reasons);
    };
  }

  private static Optional<Verdict> ripening(LotCase lot, Ripeness ripeness, List<String> reasons) {
    Optional<Days> takes =
        lot.crop().maturity().flatMap(Maturity::ripening).map(r -> r.takes().value());
    if (takes.isEmpty() || lot.daysSinceHarvest() > takes.get().high()) {
      return Optional.of(
          lot.verdict(State.CHECK_ONE, Optional.empty(), doubt(reasons), cutMore(ripeness)));
    }
    reasons.add("It is old enough to ripen in a warm place, at 20 to 27 C.");
    return Optional.of(
        lot.verdict(
            State.RESTING,
            lot.expectSince("ripe enough to cut one", lot.lot().harvestedAt(), takes.get()),
            reasons,
            cutMore(ripeness)));
  }

  /** Says how many more fruits settle it; by Wilson's interval, four alike of the first four. */
  private static String cutMore(Ripeness ripeness) {
    int clear = ripeness.share().map(RipeShare::untilCleared).orElse(FIRST_ALIKE);
    int condemn = ripeness.share().map(RipeShare::untilCondemned).orElse(FIRST_ALIKE);
    return "Cut one that you did not choose by its looks, and note its seeds: "
        + clear
        + " more with full seeds and none flat clear the lot, "
        + condemn
        + " more with flat ones condemn it.";
  }

  private static List<String> doubt(List<String> reasons) {
    reasons.add(0, "Doubtful: cut one.");
    return reasons;
  }

  private static String notToBlame(FrostNoted frost) {
    return "The frost of "
        + frost.minimumMilliC() / 1000.0
        + " C is not to blame: it left no water-soaked rind.";
  }
}
