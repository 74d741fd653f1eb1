package rindward.controller.variety;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import rindward.controller.crop.Crop;
import rindward.controller.ledger.CureEnd;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;

/**
 * One lot of a variety, and what the air has done to it.
 *
 * @param lived until the time for which the verdict is asked
 */
public record Grown(Lot lot, Crop crop, LotExposure lived) {
  private static final long DAY_MILLIS = 86_400_000;

  /** Returns which variety it is. */
  public VarietyName name() {
    return new VarietyName(crop.key(), lot.variety());
  }

  /** Returns the year it was harvested in. */
  int season() {
    return lot.harvestedAt().atZone(ZoneOffset.UTC).getYear();
  }

  /** Returns whole days from harvest to an instant; never below zero. */
  int day(Instant at) {
    return (int) Math.max(0, Duration.between(lot.harvestedAt(), at).toDays());
  }

  /** Returns whole days of life spent, as the guide counts them. */
  int age() {
    return (int) (lived.spentMillis() / DAY_MILLIS);
  }

  /** Tells whether its cure had ended by an instant. */
  boolean isCuredBy(Instant at) {
    return lived.cureEnd().map(CureEnd::at).filter(end -> !end.isAfter(at)).isPresent();
  }
}
