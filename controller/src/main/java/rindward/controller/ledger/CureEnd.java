package rindward.controller.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Cure;
import rindward.controller.lot.Lot;

/**
 * When a lot's curing was over and its keeping began, and how that is known.
 *
 * @param at the instant from which it keeps
 * @param how by what
 */
public record CureEnd(Instant at, How how) {
  /** A lot that shows no progress by then was not brought in to be cured. */
  private static final Duration PATIENCE = Duration.ofDays(2);

  /** By what the end of a cure is known. */
  public enum How {
    /** Its type has no cure. */
    NOT_NEEDED,
    /** The air that was measured adds up to a whole cure. */
    MEASURED,
    /** Somebody saw it. */
    TOLD,
    /** It would have gained by more and does well without; it was moved on. */
    MOVED_ON,
    /** It never had a whole cure that anybody measured, and twice the usual time has passed. */
    WAITED_LONG
  }

  /** Tells whether its account ends the cure there by itself. */
  boolean isByAccount() {
    return how == How.NOT_NEEDED || how == How.MEASURED;
  }

  /** Returns the end of a lot's curing; empty while it cures. */
  public static Optional<CureEnd> of(Lot lot, Crop crop, LotAccount account, Instant now) {
    Instant harvested = lot.harvestedAt();
    if (crop.cure().isEmpty()) {
      return Optional.of(new CureEnd(harvested, How.NOT_NEEDED));
    }
    Cure cure = crop.cure().get();
    Instant measured = account.curedAt();
    Optional<Instant> told = lot.attested().map(a -> a.at());
    if (told.isPresent() && (measured == null || told.get().isBefore(measured))) {
      return Optional.of(new CureEnd(told.get(), How.TOLD));
    }
    if (measured != null) {
      return Optional.of(new CureEnd(measured, How.MEASURED));
    }
    if (cure.need() == Cure.Need.OPTIONAL) {
      if (lot.stays().size() > 1) {
        return Optional.of(new CureEnd(lot.stays().get(0).to(), How.MOVED_ON));
      }
      if (account.cureProgress().measured() == 0 && now.isAfter(harvested.plus(PATIENCE))) {
        return Optional.of(new CureEnd(harvested, How.MOVED_ON));
      }
    }
    Duration usual = Duration.ofDays(cure.days().value().high());
    return now.isBefore(harvested.plus(usual.multipliedBy(2)))
        ? Optional.empty()
        : Optional.of(new CureEnd(harvested.plus(usual), How.WAITED_LONG));
  }
}
