package rindward.controller.journal;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Harm;

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
 * @param found what else may be harmful in it; empty for nothing
 */
public record CutFruit(
    @Nullable Seeds seeds,
    @Nullable Integer fleshMm,
    String colour,
    boolean freeLiquid,
    boolean rotInside,
    @Nullable Integer dryMatterMilliPct,
    @Nullable Integer solubleSolidsMilliPct,
    @Nullable List<Harm> found) {
  private static final int MOST_FLESH_MM = 300;
  private static final int WHOLE_MILLI_PCT = 100_000;

  /** Its fields. */
  static final Parts<CutFruit> PARTS =
      Parts.of(
          CutFruit.class,
          Field.word("seeds", Seeds.class).orNothing(),
          Field.whole("fleshMm")
              .column("flesh_mm")
              .called("flesh in mm")
              .orNothing()
              .within(0, MOST_FLESH_MM),
          Field.text("colour"),
          Field.yes("freeLiquid").column("free_liquid"),
          Field.yes("rotInside").column("rot_inside"),
          Field.thousandths("dryMatterMilliPct")
              .column("dry_matter_pct")
              .called("dry matter")
              .orNothing()
              .within(0, WHOLE_MILLI_PCT, "it must be 0 to 100 percent"),
          Field.thousandths("solubleSolidsMilliPct")
              .column("soluble_solids_pct")
              .called("soluble solids")
              .orNothing()
              .within(0, WHOLE_MILLI_PCT, "it must be 0 to 100 percent"),
          Field.words("found", Harm.class).orNothing());

  public CutFruit {
    found = found == null || found.isEmpty() ? null : List.copyOf(found);
  }

  /** A fruit of which only the seeds were looked at, or nothing. */
  public static CutFruit of(@Nullable Seeds seeds) {
    return new CutFruit(seeds, null, "", false, false, null, null, null);
  }

  /** Returns everything found in it that may be harmful. */
  public Set<Harm> harms() {
    Set<Harm> harms = EnumSet.noneOf(Harm.class);
    if (found != null) {
      harms.addAll(found);
    }
    if (rotInside) {
      harms.add(Harm.ROT);
    }
    return harms;
  }
}
