package rindward.dashboard.tastings;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the cook goes by, and must not lie on the table.
 *
 * @param bitter samples that somebody found bitter: to be taken away
 */
public record KitchenView(
    String tasting, List<PotView> pots, List<TrayView> trays, List<String> bitter) {
  public KitchenView {
    pots = List.copyOf(pots);
    trays = List.copyOf(trays);
    bitter = List.copyOf(bitter);
  }

  /**
   * What is cooked for one sample.
   *
   * @param fruits which are cut for it
   * @param cooked those of them that are noted as cooked
   */
  public record PotView(
      String sample,
      String lot,
      String cropName,
      String variety,
      List<String> fruits,
      List<CookedView> cooked) {
    public PotView {
      fruits = List.copyOf(fruits);
      cooked = List.copyOf(cooked);
    }
  }

  /**
   * What was seen of a fruit as it was cut and cooked; null for what nobody looked at. The fields
   * are those of {@link CookedRequest}.
   */
  public record CookedView(
      String fruit,
      @Nullable Integer weightGrams,
      @Nullable Integer minutes,
      @Nullable Integer fleshMm,
      @Nullable String seeds,
      String colour,
      boolean freeLiquid,
      boolean rotInside,
      List<String> found,
      String doneness) {
    public CookedView {
      found = List.copyOf(found);
    }
  }

  /**
   * What one taster is served, in this order.
   *
   * @param link where the taster scores; whoever has it speaks for the taster
   */
  public record TrayView(String taster, String link, List<FilledView> cups) {
    public TrayView {
      cups = List.copyOf(cups);
    }
  }

  /** What is in a cup. */
  public record FilledView(String code, int go, String sample) {}
}
