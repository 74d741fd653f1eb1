package rindward.controller.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Range;

/**
 * What one lot has lived through: against the range it needed while it cured, and against the range
 * it has needed since. A lot whose type has no cure keeps from the start.
 *
 * @param curing time against the curing range, from harvest until cured
 * @param keeping time against the storage range, from then on
 * @param cureProgress in 1e-15 of a whole cure; {@link BoundedTotal#ZERO} for a type without a cure
 * @param curedAt when the measured progress reached a whole cure; null if it has not, or need not
 */
public record LotAccount(
    Account curing, Account keeping, BoundedTotal cureProgress, @Nullable Instant curedAt) {

  /** Nothing lived through yet. */
  public static final LotAccount BEGIN =
      new LotAccount(Account.EMPTY, Account.EMPTY, BoundedTotal.ZERO, null);

  /** Returns the account of a whole life: stretches in time order, without overlap. */
  public static LotAccount of(List<Exposure> life, Crop crop, long holdMillis) {
    LotAccount account = BEGIN;
    for (Exposure stretch : life) {
      account = account.then(stretch, crop, holdMillis);
    }
    return account;
  }

  /**
   * Returns the account with one more stretch of life, the one directly after what it holds.
   *
   * @param holdMillis how long a sample holds at most
   */
  public LotAccount then(Exposure stretch, Crop crop, long holdMillis) {
    Range keepingRange = crop.keeping().range();
    Optional<Cure> cure = crop.cure();
    if (cure.isEmpty() || curedAt != null) {
      return new LotAccount(
          curing,
          keeping.plus(
              count(stretch, keepingRange, stretch.fromMillis(), stretch.toMillis(), holdMillis)),
          cureProgress,
          curedAt);
    }
    CureCounter counter = new CureCounter(cure.get(), stretch.accuracy(), cureProgress);
    SampleHold.count(
        stretch.history(), stretch.fromMillis(), stretch.toMillis(), holdMillis, counter);
    OptionalLong done = counter.doneAtMillis();
    long cut = done.orElse(stretch.toMillis());
    Range curingRange = cure.get().target();
    return new LotAccount(
        curing.plus(count(stretch, curingRange, stretch.fromMillis(), cut, holdMillis)),
        keeping.plus(count(stretch, keepingRange, cut, stretch.toMillis(), holdMillis)),
        counter.progress(),
        done.isPresent() ? Instant.ofEpochMilli(done.getAsLong()) : null);
  }

  /**
   * Returns the account of a lot whose cure ended otherwise than by what was measured: what it
   * needed until then is one thing, and what it has needed since another.
   *
   * @param life the same that was counted
   */
  LotAccount endedAt(Instant end, List<Exposure> life, Crop crop, long holdMillis) {
    Range curingRange = crop.cure().orElseThrow().target();
    Range keepingRange = crop.keeping().range();
    Account cured = Account.EMPTY;
    Account kept = Account.EMPTY;
    for (Exposure stretch : life) {
      long cut = Math.max(stretch.fromMillis(), Math.min(stretch.toMillis(), end.toEpochMilli()));
      cured = cured.plus(count(stretch, curingRange, stretch.fromMillis(), cut, holdMillis));
      kept = kept.plus(count(stretch, keepingRange, cut, stretch.toMillis(), holdMillis));
    }
    return new LotAccount(cured, kept, cureProgress, curedAt);
  }

  private static Account count(
      Exposure stretch, Range range, long fromMillis, long toMillis, long holdMillis) {
    return RangeCounter.account(
        stretch.history(), range, stretch.accuracy(), fromMillis, toMillis, holdMillis);
  }
}
