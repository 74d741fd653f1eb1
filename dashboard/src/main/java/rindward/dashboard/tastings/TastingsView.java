package rindward.dashboard.tastings;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every tasting, the newest first.
 *
 * @param zone the farm's time zone
 * @param total how many there are, of which these are a part
 */
public record TastingsView(Instant at, String zone, int total, List<TastingLine> tastings) {
  public TastingsView {
    tastings = List.copyOf(tastings);
  }

  /**
   * One tasting, in a line.
   *
   * @param closedAt null while it is under way
   * @param blinding how much the tasters could know, in a sentence
   * @param cups how many stand before all tasters together
   * @param scored of how many of them nothing more is asked, found bitter ones among them
   */
  public record TastingLine(
      String name,
      Instant plannedAt,
      @Nullable Instant closedAt,
      String blinding,
      int samples,
      int tasters,
      int cups,
      int scored) {}
}
