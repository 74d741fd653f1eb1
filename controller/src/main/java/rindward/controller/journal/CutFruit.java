package rindward.controller.journal;

import org.jspecify.annotations.Nullable;

/**
 * What was seen of a fruit when it was cut and cooked; null for what nobody looked at.
 *
 * @param seeds full or flat
 * @param fleshMm thickness of the flesh in millimetres
 * @param colour of the flesh, in the grower's words; may be empty
 * @param freeLiquid whether liquid stood in the pan
 * @param rotInside whether there was rot that could not be seen from outside
 * @param dryMatterMilliPct of the flesh, thousandths of a percent
 * @param solubleSolidsMilliPct of its juice at eating (degrees Brix), thousandths of a percent
 */
public record CutFruit(
    @Nullable Seeds seeds,
    @Nullable Integer fleshMm,
    String colour,
    boolean freeLiquid,
    boolean rotInside,
    @Nullable Integer dryMatterMilliPct,
    @Nullable Integer solubleSolidsMilliPct) {

  /** A fruit of which only the seeds were looked at, or nothing. */
  public static CutFruit of(@Nullable Seeds seeds) {
    return new CutFruit(seeds, null, "", false, false, null, null);
  }
}
