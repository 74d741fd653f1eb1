package rindward.controller.metrics;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.readiness.State;

/**
 * Binds alarms, channels and lots to gauges. Tags are bounded: states and priorities of the
 * program, channels of the settings; never a lot or an alarm by its name.
 */
final class CallMetrics implements MeterBinder {
  private final AlarmTable table;
  private final Supplier<@Nullable ShedSnapshot> latest;
  private final Supplier<LotNotes> lots;
  private final List<DeliveryChannel> ways;

  /**
   * @param ways every channel and connection by which the shed reaches somebody
   */
  CallMetrics(
      AlarmTable table,
      Supplier<@Nullable ShedSnapshot> latest,
      Supplier<LotNotes> lots,
      List<DeliveryChannel> ways) {
    this.table = table;
    this.latest = latest;
    this.lots = lots;
    this.ways = List.copyOf(ways);
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    for (Priority priority : List.of(Priority.WAKE, Priority.DIGEST)) {
      for (AlarmState state : AlarmState.values()) {
        if (state != AlarmState.NORMAL) {
          Gauge.builder("rindward.alarms", () -> alarms(priority, state))
              .description("alarms by priority and state")
              .tag("priority", word(priority))
              .tag("state", word(state))
              .register(registry);
        }
      }
    }
    for (DeliveryChannel way : ways) {
      Gauge.builder("rindward.channel.failing", () -> way.trouble().get().isEmpty() ? 0 : 1)
          .description("1 while the channel does not take what is sent")
          .tag("channel", way.name())
          .register(registry);
      Gauge.builder("rindward.channel.waiting", () -> way.waiting().get())
          .description("messages that wait to go out")
          .tag("channel", way.name())
          .register(registry);
    }
    for (State state : State.values()) {
      Gauge.builder("rindward.lots", () -> lots(state))
          .description("lots by verdict")
          .tag("verdict", state.toString().replaceAll("[^a-z]+", "-"))
          .register(registry);
    }
  }

  private double alarms(Priority priority, AlarmState state) {
    ShedSnapshot snapshot = latest.get();
    return snapshot == null
        ? Double.NaN
        : snapshot.judgement().alarms().all().entrySet().stream()
            .filter(e -> table.row(e.getKey().kind()).priority() == priority)
            .map(e -> e.getValue())
            .map(Alarm::state)
            .filter(s -> s == state)
            .count();
  }

  private double lots(State state) {
    return lots.get().lots().stream().filter(lot -> lot.verdict().state() == state).count();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
