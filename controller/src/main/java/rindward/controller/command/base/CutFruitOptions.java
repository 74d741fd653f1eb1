package rindward.controller.command.base;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rindward.controller.crop.Harm;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Seeds;
import rindward.hardware.Thousandths;

/** What was seen of a cut fruit, for every command that may say it; all of it optional. */
public final class CutFruitOptions {
  @Option(names = "--seeds", description = "How the seeds looked: ${COMPLETION-CANDIDATES}.")
  private @Nullable Seeds seeds;

  @Option(names = "--flesh", paramLabel = "MM", description = "Thickness of the flesh.")
  private @Nullable Integer fleshMm;

  @Option(names = "--colour", description = "Of the flesh, in your words.")
  private String colour = "";

  @Option(names = "--liquid", description = "Liquid stood in the pan.")
  private boolean freeLiquid;

  @Option(names = "--rot-inside", description = "There was rot that nobody saw from outside.")
  private boolean rotInside;

  @Option(
      names = "--dry-matter",
      paramLabel = "PERCENT",
      description = "Weight of a slice dried until it loses no more, of its weight before.")
  private @Nullable Double dryMatterPct;

  @Option(
      names = "--soluble-solids",
      paramLabel = "PERCENT",
      description = "Of the juice at eating, by a refractometer (degrees Brix).")
  private @Nullable Double solubleSolidsPct;

  @Option(
      names = "--found",
      split = ",",
      paramLabel = "WHAT",
      description =
          "What makes it unfit to eat: ${COMPLETION-CANDIDATES}. One such finding stops the lot or"
              + " warns of it at once.")
  private List<Harm> found = List.of();

  public CutFruit seen() {
    return new CutFruit(
        seeds,
        fleshMm,
        colour,
        freeLiquid,
        rotInside,
        thousandths(dryMatterPct),
        thousandths(solubleSolidsPct),
        found);
  }

  private static @Nullable Integer thousandths(@Nullable Double value) {
    return value == null ? null : Integer.valueOf(Thousandths.of(value));
  }
}
