package rindward.dashboard.tastings;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.tastings.TastingsView.TastingLine;

/**
 * One tasting: how far the tasters are, and what it says once it is closed.
 *
 * @param zone the farm's time zone
 * @param preparation how all samples are made ready, a part each
 * @param heatC temperature of oven or pan, degrees C; null if nobody said
 * @param servedAtC temperature at the table, degrees C; likewise
 * @param warmUp what is tasted first, openly and unscored
 * @param orders what can be said of how even the serving orders are, a sentence each
 * @param fruitsOpen samples that were scored, and nobody said which fruits were cooked for them
 * @param result null while it is under way
 */
public record TastingView(
    Instant at,
    String zone,
    TastingLine tasting,
    List<String> preparation,
    @Nullable Double heatC,
    @Nullable Double servedAtC,
    @Nullable String warmUp,
    List<String> orders,
    List<TasterView> tasters,
    int fruitsOpen,
    @Nullable ResultView result) {
  public TastingView {
    preparation = List.copyOf(preparation);
    orders = List.copyOf(orders);
    tasters = List.copyOf(tasters);
  }

  /** One taster, and the cups in the order in which they are served. */
  public record TasterView(String name, List<CupView> cups) {
    public TasterView {
      cups = List.copyOf(cups);
    }
  }

  /**
   * One cup.
   *
   * @param go which go it belongs to, from 1
   * @param scored whether it was said how it is liked
   */
  public record CupView(String code, int go, boolean scored) {}
}
