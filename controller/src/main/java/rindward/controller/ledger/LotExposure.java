package rindward.controller.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Crop;
import rindward.controller.lot.Lot;

/**
 * Everything the air has done to one lot.
 *
 * @param account time against its ranges, and the progress of its cure
 * @param cureEnd when its keeping began; empty while it cures
 * @param pace what the air where it is did for its cure in the last day; empty once it has cured
 * @param spentMillis life spent since then, in milliseconds at the reference temperature of its
 *     type
 * @param ages how old it was, in the same measure, whenever a fruit left it
 * @param unknownMillis how much time since harvest was not measured
 * @param elapsedMillis time since harvest
 * @param cold the cold it has had since harvest
 * @param dryCostMilliPct weight lost to dry air while it cured, thousandths of a percent; 0 also
 *     where nobody knows
 */
public record LotExposure(
    LotAccount account,
    Optional<CureEnd> cureEnd,
    Optional<CurePace> pace,
    long spentMillis,
    Ages ages,
    long unknownMillis,
    long elapsedMillis,
    Cold cold,
    int dryCostMilliPct) {

  /**
   * Reads a lot's life.
   *
   * @param life from harvest until now: stretches in time order, without overlap
   * @param account of that same life
   * @param here what was measured where it is now
   * @param holdMillis how long a sample holds at most
   */
  public static LotExposure of(
      Lot lot,
      Crop crop,
      List<Exposure> life,
      LotAccount account,
      History here,
      long holdMillis,
      Instant now) {
    Optional<CureEnd> end = CureEnd.of(lot, crop, account, now);
    long keepsFrom = end.map(e -> e.at().toEpochMilli()).orElse(Long.MAX_VALUE);
    Ages.Counting age = new Ages.Counting(crop, lot, holdMillis);
    ColdCounter cold = new ColdCounter(crop, lot.fruitGrams());
    Optional<DryCost> dry = DryCost.of(crop);
    for (Exposure stretch : life) {
      count(stretch, stretch.fromMillis(), stretch.toMillis(), holdMillis, cold);
      age.count(stretch, keepsFrom);
      dry.ifPresent(
          cost ->
              count(
                  stretch,
                  stretch.fromMillis(),
                  Math.min(stretch.toMillis(), keepsFrom),
                  holdMillis,
                  cost));
    }
    return new LotExposure(
        end.filter(e -> !e.isByAccount())
            .map(e -> account.endedAt(e.at(), life, crop, holdMillis))
            .orElse(account),
        end,
        end.isPresent()
            ? Optional.empty()
            : crop.cure().map(c -> CurePace.of(c, here, now.toEpochMilli(), holdMillis)),
        age.spentMillis(),
        age.ages(),
        account.curing().unknownMillis() + account.keeping().unknownMillis(),
        account.curing().elapsedMillis() + account.keeping().elapsedMillis(),
        cold.cold(),
        dry.map(DryCost::milliPct).orElse(0));
  }

  /** Tells whether all that is known of its cure is that somebody said it is over. */
  public boolean isCureOnlyTold() {
    return cureEnd.filter(end -> end.how() == CureEnd.How.TOLD).isPresent()
        && account.cureProgress().measured() == 0;
  }

  static void count(
      Exposure stretch,
      long fromMillis,
      long toMillis,
      long holdMillis,
      SampleHold.Counter counter) {
    long from = Math.max(fromMillis, stretch.fromMillis());
    if (from < toMillis) {
      SampleHold.count(stretch.history(), from, toMillis, holdMillis, counter);
    }
  }
}
