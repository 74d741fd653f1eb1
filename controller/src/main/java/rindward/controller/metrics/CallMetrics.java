package rindward.controller.metrics;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.State;

/**
 * Binds alarms and lots to gauges. Tags are bounded: states and priorities of the program; never a
 * lot or an alarm by its name.
 */
final class CallMetrics implements MeterBinder {
  private final AlarmTable table;
  private final ControlView control;
  private final Supplier<List<Offer>> lots;

  /**
   * @param lots every lot that holds fruit, as it was last judged
   */
  CallMetrics(AlarmTable table, ControlView control, Supplier<List<Offer>> lots) {
    this.table = table;
    this.control = control;
    this.lots = lots;
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
    for (State state : State.values()) {
      Gauge.builder("rindward.lots", () -> lots(state))
          .description("lots by verdict")
          .tag("verdict", state.toString().replaceAll("[^a-z]+", "-"))
          .register(registry);
    }
  }

  private double alarms(Priority priority, AlarmState state) {
    ControlReport report = control.latest();
    return report == null
        ? Double.NaN
        : report.snapshot().judgement().alarms().all().entrySet().stream()
            .filter(e -> table.row(e.getKey().kind()).priority() == priority)
            .map(e -> e.getValue())
            .map(Alarm::state)
            .filter(s -> s == state)
            .count();
  }

  private double lots(State state) {
    return lots.get().stream().filter(lot -> lot.verdict().state() == state).count();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
