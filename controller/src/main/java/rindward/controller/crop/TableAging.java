package rindward.controller.crop;

import java.util.List;

/**
 * Aging by stated points, for crops that a Q10 misjudges: straight lines between the points, and
 * beyond the first and the last the same as there.
 *
 * @param points at least one, from cold to warm, no temperature twice
 */
public record TableAging(List<Cited<Point>> points) implements Aging {
  /**
   * One stated point.
   *
   * @param temperatureMilliC air temperature in thousandths of a degree C
   * @param rate rate of aging in thousandths of the rate at the reference temperature
   */
  public record Point(int temperatureMilliC, int rate) {}

  public TableAging {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("points were empty but a table must have at least one");
    }
    for (int i = 1; i < points.size(); i++) {
      int before = points.get(i - 1).value().temperatureMilliC();
      int here = points.get(i).value().temperatureMilliC();
      if (before >= here) {
        throw new IllegalArgumentException(
            "points went from " + before + " to " + here + " but they must run from cold to warm");
      }
    }
  }

  @Override
  public int rate(int temperatureMilliC) {
    Point before = points.get(0).value();
    for (Cited<Point> cited : points) {
      Point here = cited.value();
      if (temperatureMilliC == here.temperatureMilliC()
          || temperatureMilliC < here.temperatureMilliC() && here == before) {
        return here.rate();
      }
      if (temperatureMilliC < here.temperatureMilliC()) {
        long run = here.temperatureMilliC() - (long) before.temperatureMilliC();
        long along = temperatureMilliC - (long) before.temperatureMilliC();
        long rise = here.rate() - (long) before.rate();
        return Math.toIntExact(before.rate() + Math.floorDiv(rise * along, run));
      }
      before = here;
    }
    return before.rate();
  }
}
