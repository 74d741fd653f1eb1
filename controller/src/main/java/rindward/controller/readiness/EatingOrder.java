package rindward.controller.readiness;

import java.util.Comparator;
import java.util.List;
import rindward.controller.crop.Crop;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;

/**
 * What to eat first: lots whose good is soonest lost come first, and of two that are lost alike the
 * larger one. Lots without a fruit that is free for the kitchen, and lots that still cure, rest or
 * will not be good, are not offered.
 */
public final class EatingOrder {
  private EatingOrder() {}

  /** One lot with its verdict. */
  public record Offer(Lot lot, Crop crop, LotExposure lived, Verdict verdict) {}

  /** Returns what may be eaten, the first first. */
  public static List<Offer> of(List<Offer> lots) {
    return lots.stream()
        .filter(offer -> offer.lot().fruits().free() > 0)
        .filter(offer -> urgency(offer.verdict().state()) > 0)
        .sorted(
            Comparator.comparingInt((Offer offer) -> urgency(offer.verdict().state()))
                .reversed()
                .thenComparingLong(EatingOrder::daysLeft)
                .thenComparing(
                    Comparator.comparingInt((Offer offer) -> offer.lot().fruits().free())
                        .reversed())
                .thenComparing(offer -> offer.lot().code()))
        .toList();
  }

  /** Returns how much a state presses; 0 if it is not to be eaten now. */
  private static int urgency(State state) {
    return switch (state) {
      case INJURED -> 4;
      case EAT_FIRST -> 3;
      case CHECK_ONE -> 2;
      case READY -> 1;
      case STOPPED,
          NOTHING_LEFT,
          UNLIKELY_EVER_GOOD,
          PAST,
          CURING,
          NOT_CURING,
          CURE_NOT_KNOWN,
          RESTING ->
          0;
    };
  }

  /**
   * Returns the days until the middle of its life, at the reference temperature; may be negative.
   */
  private static long daysLeft(Offer offer) {
    long age = offer.lived().spentMillis() / 86_400_000;
    return LifeQuestion.middle(offer.verdict().yardstick().life()) - age;
  }
}
