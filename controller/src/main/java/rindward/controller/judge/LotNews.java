package rindward.controller.judge;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.State;

/**
 * What there is to tell of the lots that hold fruit, without being asked.
 *
 * @param lots every one of them, as it stands
 * @param items what is news of single ones
 * @param cured codes of those whose cure has ended, however that is known
 */
public record LotNews(List<Offer> lots, Set<Item> items, Set<String> cured) {
  /** That a lot has cured is news for so long. */
  private static final Duration FRESH = Duration.ofDays(3);

  /** Nothing was judged yet. */
  public static final LotNews NONE = new LotNews(List.of(), Set.of(), Set.of());

  /** What may be news of a lot. */
  public enum What {
    CURED,
    READY,
    EAT_FIRST,
    PAST
  }

  /**
   * One piece of news.
   *
   * @param lot its code
   */
  public record Item(What what, String lot) {}

  public LotNews {
    lots = List.copyOf(lots);
    items = Set.copyOf(items);
    cured = Set.copyOf(cured);
  }

  /** Gathers what is so of all lots. */
  public static LotNews of(JudgedLots judged) {
    List<Offer> lots = judged.holding();
    Set<Item> items = new HashSet<>();
    for (Offer offer : lots) {
      String code = offer.lot().code();
      what(offer.verdict().state()).ifPresent(what -> items.add(new Item(what, code)));
      if (hasJustCured(offer, judged.hour())) {
        items.add(new Item(What.CURED, code));
      }
    }
    return new LotNews(
        lots,
        items,
        lots.stream()
            .filter(offer -> offer.lived().cureEnd().isPresent())
            .map(offer -> offer.lot().code())
            .collect(Collectors.toSet()));
  }

  private static boolean hasJustCured(Offer offer, Instant now) {
    Instant measured = offer.lived().account().curedAt();
    return offer.crop().cure().isPresent()
        && measured != null
        && now.isBefore(measured.plus(FRESH));
  }

  private static Optional<What> what(State state) {
    return switch (state) {
      case READY -> Optional.of(What.READY);
      case EAT_FIRST -> Optional.of(What.EAT_FIRST);
      case PAST -> Optional.of(What.PAST);
      case STOPPED,
          NOTHING_LEFT,
          UNLIKELY_EVER_GOOD,
          INJURED,
          CHECK_ONE,
          CURING,
          NOT_CURING,
          CURE_NOT_KNOWN,
          RESTING ->
          Optional.empty();
    };
  }
}
