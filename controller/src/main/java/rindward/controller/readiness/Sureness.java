package rindward.controller.readiness;

import rindward.controller.ledger.CureEnd;
import rindward.controller.ledger.CureEnd.How;
import rindward.controller.ledger.LotExposure;

/** How sure a verdict is: by how much of the lot's life was measured. */
public enum Sureness {
  MEASURED("measured"),
  PARTLY_MEASURED("partly measured"),
  /** Somebody saw it and said so. */
  TOLD("told"),
  ASSUMED("assumed: most of its time was not measured");

  /** Gaps up to a twentieth of a life leave a verdict as it is; common practice. */
  private static final int SMALL_SHARE = 20;

  private final String word;

  Sureness(String word) {
    this.word = word;
  }

  static Sureness of(LotExposure lived) {
    if (lived.cureEnd().map(CureEnd::how).filter(how -> how == How.TOLD).isPresent()) {
      return TOLD;
    }
    if (lived.elapsedMillis() == 0) {
      return ASSUMED;
    }
    if (lived.unknownMillis() * SMALL_SHARE <= lived.elapsedMillis()) {
      return MEASURED;
    }
    return lived.unknownMillis() * 2 <= lived.elapsedMillis() ? PARTLY_MEASURED : ASSUMED;
  }

  /** Returns the words used in commands and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
