package rindward.controller.judge;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.readiness.RipeShare;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;
import rindward.controller.variety.CupWorth;
import rindward.controller.variety.CupWorth.Says;
import rindward.controller.variety.Grown;

/**
 * What a practitioner does when a fruit was unripe: cooks a second one of the same lot beside one
 * of another, the same way. Was it that fruit, the lot, or the cooking?
 *
 * @param samples a fruit of the lot that nobody has cut, and one of the other lot
 * @param name of the tasting that is proposed
 * @param tasters those of the last tasting; empty if there was none
 * @param preparation that of the last tasting
 * @param sentence the proposal
 * @param ifRipe what it means if the second fruit is ripe
 * @param ifUnripe what it means if it is not
 */
public record SecondFruit(
    List<Served> samples,
    String name,
    List<String> tasters,
    Optional<Preparation> preparation,
    String sentence,
    String ifRipe,
    String ifUnripe) {
  private static final int LONGEST_NAME = 60;

  public SecondFruit {
    samples = List.copyOf(samples);
    tasters = List.copyOf(tasters);
  }

  /** Returns the proposal for a lot; empty if no fruit of it was unripe, or it is known enough. */
  public static Optional<SecondFruit> of(Lot lot, JudgedLots judged) {
    return judged.grown(lot).flatMap(grown -> of(grown, judged));
  }

  private static Optional<SecondFruit> of(Grown grown, JudgedLots judged) {
    Ripeness ripeness = Ripeness.of(grown.lot(), grown.crop());
    Optional<RipeShare> share = ripeness.share().filter(RipeShare::hasUnripe);
    boolean isOpen = ripeness.level() == Level.DOUBTFUL && grown.lot().fruits().free() > 0;
    if (share.isEmpty() || !isOpen || CupWorth.of(grown).says() == Says.NOTHING) {
      return Optional.empty();
    }
    return beside(grown, judged).map(other -> proposal(grown, share.get(), other, judged));
  }

  /** Another lot whose cups can speak, the more alike the better. */
  private static Optional<Grown> beside(Grown asked, JudgedLots judged) {
    return judged.told().lots().all().stream()
        .filter(lot -> !lot.code().equals(asked.lot().code()) && lot.fruits().free() > 0)
        .flatMap(lot -> judged.grown(lot).stream())
        .filter(other -> other.crop().group() == asked.crop().group())
        .filter(other -> CupWorth.of(other).says() == Says.MUCH)
        .min(
            Comparator.comparing((Grown other) -> !other.name().equals(asked.name()))
                .thenComparing(other -> !other.crop().key().equals(asked.crop().key()))
                .thenComparing(other -> other.lot().code()));
  }

  private static SecondFruit proposal(Grown grown, RipeShare seen, Grown other, JudgedLots judged) {
    String code = grown.lot().code();
    String beside = other.lot().code();
    Optional<SessionPlanned> last = last(judged);
    RipeShare ripe = new RipeShare(seen.ripe() + 1, seen.cut() + 1, seen.ofLot());
    RipeShare unripe = new RipeShare(seen.ripe(), seen.cut() + 1, seen.ofLot());
    return new SecondFruit(
        List.of(uncut(grown.lot(), judged), uncut(other.lot(), judged)),
        name(code, judged),
        last.map(SessionPlanned::panelists).orElse(List.of()),
        last.map(SessionPlanned::preparation),
        "A fruit of "
            + code
            + " was not ripe. Cook a second one beside one of "
            + beside
            + ", the same way.",
        "If it is ripe, it was that fruit rather than the lot. "
            + ripe.sentence()
            + (ripe.isMostlyRipe() ? "" : " Cut each before you count on it."),
        "If it is not ripe either, and the fruit of "
            + beside
            + " is good, it was not the cooking. "
            + unripe.sentence()
            + (unripe.isMostlyUnripe()
                ? " The lot is then set apart."
                : " After " + unripe.untilCondemned() + " more such fruits the lot is set apart."));
  }

  /** The first number that no fruit of the lot has. */
  private static Served uncut(Lot lot, JudgedLots judged) {
    Set<String> taken = new HashSet<>();
    lot.tastes().forEach(taste -> taken.add(String.valueOf(taste.fruit())));
    lot.weighings().forEach(weighed -> taken.add(String.valueOf(weighed.fruit())));
    judged.told().sessions().stream()
        .flatMap(session -> session.planned().samples().stream())
        .filter(sample -> sample.lot().equals(lot.code()))
        .forEach(sample -> taken.addAll(sample.fruits()));
    int number = 1;
    while (taken.contains(String.valueOf(number))) {
      number++;
    }
    String fruit = String.valueOf(number);
    return new Served(lot.code() + ":" + fruit, lot.code(), List.of(fruit));
  }

  private static Optional<SessionPlanned> last(JudgedLots judged) {
    return judged.told().sessions().stream()
        .map(Session::planned)
        .reduce((earlier, later) -> later);
  }

  private static String name(String code, JudgedLots judged) {
    List<String> taken = judged.told().sessions().stream().map(Session::name).toList();
    String name = "second fruit of " + code;
    for (int i = 2; taken.contains(name) && name.length() < LONGEST_NAME; i++) {
      name = "second fruit of " + code + ", " + i;
    }
    return name;
  }
}
