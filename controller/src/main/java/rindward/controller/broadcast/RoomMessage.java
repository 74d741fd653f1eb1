package rindward.controller.broadcast;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.Range;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * One room as it is published; what was not measured is null, and a room at rest has no targets.
 */
record RoomMessage(
    Instant at,
    String room,
    String purpose,
    @Nullable Double temperatureC,
    @Nullable Double relativeHumidity,
    @Nullable Double fruitC,
    @Nullable Double targetLowC,
    @Nullable Double targetHighC,
    @Nullable Double targetLowRh,
    @Nullable Double targetHighRh,
    List<OutputMessage> outputs,
    List<String> troubles) {

  /** One output with the reason why it is on or off. */
  record OutputMessage(String name, String kind, boolean on, String reason) {}

  static RoomMessage of(RoomState state, Instant at) {
    Range range = state.demand().range();
    return new RoomMessage(
        at,
        state.room().name(),
        state.room().purpose().word(),
        known(state.picture().temperatureMilliC()),
        known(state.picture().humidityMilliPct()),
        known(state.picture().fruitMilliC()),
        range == null ? null : known(range.temperature().low()),
        range == null ? null : known(range.temperature().high()),
        range == null ? null : known(range.humidity().low()),
        range == null ? null : known(range.humidity().high()),
        state.room().outputs().values().stream()
            .map(
                output ->
                    new OutputMessage(
                        output.name(),
                        output.kind().word(),
                        state.isOn(output.kind()),
                        reason(state, output.kind())))
            .toList(),
        state.picture().troubles());
  }

  private static String reason(RoomState state, OutputKind kind) {
    @Nullable OutputDecision ruling = state.rulings().get(kind);
    return ruling == null ? "" : ruling.reason().sentence();
  }

  private static @Nullable Double known(int thousandths) {
    return thousandths == Thousandths.NONE ? null : (Double) Thousandths.toDouble(thousandths);
  }
}
