package rindward.dashboard.rooms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was switched in a room over a stretch of time.
 *
 * @param slotMillis length of a slot of the strips
 * @param outputs in the order of the settings
 * @param changes the newest, each with its reason
 */
public record SwitchingView(
    Instant from, Instant to, long slotMillis, List<StripView> outputs, List<ChangeView> changes) {

  /**
   * One output over time.
   *
   * @param onShare for each slot the part of its known time in which the output was on, 0 to 1;
   *     null where nothing is known
   */
  public record StripView(String name, String kind, List<@Nullable Double> onShare) {}

  /**
   * One switching.
   *
   * @param reason why, in a sentence a grower understands
   */
  public record ChangeView(Instant at, String output, boolean on, String reason) {}
}
