package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.room.Output;
import rindward.controller.room.Room;

/**
 * Counts what each output was commanded to do since the start: how often it was switched, and for
 * how long it was on, whose rate is its duty. {@link #note} is for the control thread.
 */
final class OutputMeters implements MeterBinder {
  /** Time that passed without ticks is nobody's. */
  private static final Duration LONGEST_TICK = Duration.ofMinutes(1);

  private final List<Room> rooms;
  private final Map<String, Count> counts = new LinkedHashMap<>();
  private @Nullable Instant last;

  OutputMeters(List<Room> rooms) {
    this.rooms = List.copyOf(rooms);
  }

  /** Written by one thread, read by any. */
  private static final class Count {
    private boolean isOn;
    private volatile long switchings;
    private volatile long onMillis;

    void note(boolean nowOn, long millis) {
      onMillis = onMillis + (isOn ? millis : 0);
      switchings = switchings + (nowOn == isOn ? 0 : 1);
      isOn = nowOn;
    }
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    for (Room room : rooms) {
      for (Output output : room.outputs().values()) {
        Tags tags =
            Tags.of("room", room.name(), "output", output.name(), "kind", output.kind().word());
        Count count = counts.computeIfAbsent(output.name(), name -> new Count());
        FunctionCounter.builder("rindward.output.switchings", count, c -> c.switchings)
            .description("times it was switched on or off since the start")
            .tags(tags)
            .register(registry);
        FunctionCounter.builder("rindward.output.on.seconds", count, c -> c.onMillis / 1000.0)
            .description("time it was commanded on since the start; its rate is the duty")
            .tags(tags)
            .register(registry);
      }
    }
  }

  /** Takes in a tick. */
  void note(ShedSnapshot snapshot) {
    Instant before = last;
    last = snapshot.at();
    Duration passed = before == null ? Duration.ZERO : Duration.between(before, snapshot.at());
    boolean isTick = !passed.isNegative() && passed.compareTo(LONGEST_TICK) <= 0;
    for (RoomState state : snapshot.rooms()) {
      for (Output output : state.room().outputs().values()) {
        Count count = counts.get(output.name());
        OutputDecision ruling = state.rulings().get(output.kind());
        if (count != null) {
          count.note(ruling != null && ruling.on(), isTick ? passed.toMillis() : 0);
        }
      }
    }
  }
}
