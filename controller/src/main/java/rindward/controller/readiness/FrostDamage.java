package rindward.controller.readiness;

import java.util.Optional;
import rindward.controller.journal.FrostNoted;

/** Whether a frost hurt the fruit itself, and not only the vines. */
public final class FrostDamage {
  /**
   * Bare fruit is in danger from here on (Illinois extension 2004: 27 F; light frost that kills
   * only the vines leaves it unharmed, Iowa State 1997 and 2015).
   */
  static final int DANGER_MILLI_C = -2_800;

  private FrostDamage() {}

  /** Tells whether a frost hurt the fruit. */
  public static boolean hurt(FrostNoted frost) {
    return frost.waterSoaked() || !frost.covered() && frost.minimumMilliC() <= DANGER_MILLI_C;
  }

  /** Returns the sentence about a frost that hurt; empty if none did. */
  static Optional<String> sentence(LotCase lot) {
    return lot.lot().frosts().stream()
        .filter(FrostDamage::hurt)
        .findFirst()
        .map(
            frost ->
                frost.waterSoaked()
                    ? "Frost left its rind water-soaked."
                    : "It lay bare in a frost of " + frost.minimumMilliC() / 1000.0 + " C.");
  }
}
