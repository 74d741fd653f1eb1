package rindward.controller.metrics;

import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.file.Path;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.room.Room;
import rindward.controller.task.TaskState;

/**
 * All meters as Prometheus text, made of what control tells; what is counted is counted since the
 * start of whoever makes this. Safe for any thread.
 */
public final class Scrape {
  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final TickTimes ticks = new TickTimes();
  private final OutputMeters outputs;
  private final ProbeMeters probes;
  private final ChannelMeters channels;
  private final TaskMeters tasks;

  /**
   * @param altitudeM height above the sea, for the dew point
   * @param probeNames names of all probes
   * @param control tells of the shed; each report is counted
   * @param nanos the monotonic clock of this process
   * @param lots every lot that holds fruit, as it was last judged
   * @param store the database's file
   * @param ownTasks everything that runs by itself here and not in control
   */
  public Scrape(
      List<Room> rooms,
      double altitudeM,
      List<String> probeNames,
      ControlView control,
      LongSupplier nanos,
      AlarmTable table,
      Supplier<List<Offer>> lots,
      Path store,
      Supplier<List<TaskState>> ownTasks) {
    this.outputs = new OutputMeters(rooms);
    this.probes = new ProbeMeters(probeNames, control, nanos);
    this.channels = new ChannelMeters(registry, control);
    this.tasks = new TaskMeters(registry, control, ownTasks);
    for (MeterBinder binder :
        List.of(
            new ShedMetrics(rooms, altitudeM, control),
            outputs,
            probes,
            new CallMetrics(table, control, lots),
            new StoreMetrics(store, control),
            ticks,
            new JvmMemoryMetrics(),
            new JvmThreadMetrics(),
            new UptimeMetrics())) {
      binder.bindTo(registry);
    }
    control.eachReport(this::count);
  }

  private void count(ControlReport report) {
    ticks.note(report.snapshot().took());
    outputs.note(report.snapshot());
    probes.note(report);
  }

  /** Returns the meters in the Prometheus text format. */
  public String text() {
    channels.look();
    tasks.look();
    return registry.scrape();
  }
}
