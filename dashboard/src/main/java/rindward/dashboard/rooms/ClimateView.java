package rindward.dashboard.rooms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A room's air over a stretch of time, thinned for drawing: of each slot the lowest and the highest
 * value, each at its own instant, so that nothing is shown that was not measured and no extreme is
 * lost. Temperatures are degrees C, humidities percent.
 *
 * @param slotMillis length of a slot; as short as the distance of two samples once zoomed in
 * @param zone whose days are meant, as its IANA name
 * @param temperatureBand what the room should keep to; null for a room at rest
 * @param humidityBand likewise
 * @param outdoorTemperature empty where no probe is outdoors
 * @param outdoorHumidity likewise
 */
public record ClimateView(
    String room,
    Instant from,
    Instant to,
    long slotMillis,
    String zone,
    @Nullable BandView temperatureBand,
    @Nullable BandView humidityBand,
    LineView temperature,
    LineView humidity,
    LineView dewPoint,
    LineView outdoorTemperature,
    LineView outdoorHumidity) {

  /** A range with both limits inside it. */
  public record BandView(double low, double high) {}

  /**
   * One line, drawn from point to point.
   *
   * @param seconds instants in seconds after {@code from}, rising
   * @param values as many; null where the line breaks off because nothing was measured
   */
  public record LineView(List<Double> seconds, List<@Nullable Double> values) {

    /** A line of what was not asked for. */
    public static final LineView NONE = new LineView(List.of(), List.of());
  }
}
