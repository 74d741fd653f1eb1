package rindward.controller.season;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a season went, as it is printed and as {@code --json} gives it.
 *
 * @param rooms in the order of the settings
 * @param lots in the order of the settings; those that came in
 */
public record SeasonResult(List<RoomReport> rooms, List<LotReport> lots) {

  /**
   * One room.
   *
   * @param inRangeShare of the time it was in use and not sliding from one range to another, 0..1
   * @param coldestC coldest in that time; null if it was never in use
   * @param dampestRh dampest in that time, percent
   * @param kWh electricity of all its outputs
   * @param wetFruitHours hours in which water could be seen on fruit
   * @param chillingDegreeHours of the fruit, below the temperature that harms it
   */
  public record RoomReport(
      String name,
      double inRangeShare,
      @Nullable Double coldestC,
      @Nullable Double dampestRh,
      double tooColdHours,
      double tooWarmHours,
      double tooDryHours,
      double tooDampHours,
      double kWh,
      double wetFruitHours,
      double chillingDegreeHours,
      List<OutputReport> outputs) {}

  /** One output of a room. */
  public record OutputReport(
      String name, String kind, double kWh, int switchings, double hoursOn) {}

  /**
   * One lot.
   *
   * @param curedAt when its cure was complete; null if it was not, or if its type needs none
   * @param inRangeHours time in the range it needed at the time, as measured
   * @param cureProgress 0..1
   */
  public record LotReport(
      String code, @Nullable Instant curedAt, double inRangeHours, double cureProgress) {}
}
