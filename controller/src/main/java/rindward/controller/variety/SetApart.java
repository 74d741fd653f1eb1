package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import rindward.controller.journal.RipenessSign;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stop;
import rindward.controller.readiness.FrostDamage;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;

/**
 * Why a whole lot says nothing of how its variety tastes. It counts all the same for its ripening.
 * A lot of which only single fruits were unripe is judged by the others: see {@link UnripeFruits}.
 */
public enum SetApart {
  UNRIPE("most of it was unripe"),
  EARLY_VINES("its vines died early"),
  UNCURED("not yet cured"),
  OFF_TYPE("off type: not what its label says"),
  CHILLED("hurt by cold"),
  HARMFUL("not to be eaten");

  /** So long at or below freezing, and the fruit froze; as the verdict on a lot has it. */
  private static final long HOUR_MILLIS = 3_600_000;

  private final String words;

  SetApart(String words) {
    this.words = words;
  }

  /** Returns every reason to set a lot apart; none if it may be judged. */
  public static List<SetApart> of(Grown grown) {
    Lot lot = grown.lot();
    List<SetApart> reasons = new ArrayList<>();
    if (Ripeness.of(lot, grown.crop()).level() == Level.NEVER) {
      reasons.add(UNRIPE);
    }
    if (lot.ripeness().stream().anyMatch(note -> note.sign() == RipenessSign.VINES_DEAD)) {
      reasons.add(EARLY_VINES);
    }
    if (!lot.offType().isEmpty()) {
      reasons.add(OFF_TYPE);
    }
    if (grown.lived().cureEnd().isEmpty()) {
      reasons.add(UNCURED);
    }
    if (grown.lived().cold().isInjured()
        || grown.lived().cold().frozenMillis() >= HOUR_MILLIS
        || lot.frosts().stream().anyMatch(FrostDamage::hurt)) {
      reasons.add(CHILLED);
    }
    if (Stop.of(lot, grown.crop()).isPresent()) {
      reasons.add(HARMFUL);
    }
    return List.copyOf(reasons);
  }

  /** Tells whether a lot with such reasons still says how long its variety keeps. */
  static boolean keepAsTheyShould(List<SetApart> reasons) {
    return !reasons.contains(UNRIPE) && !reasons.contains(OFF_TYPE) && !reasons.contains(CHILLED);
  }

  /** Returns the reason as part of a sentence. */
  public String words() {
    return words;
  }
}
