package rindward.controller.metrics;

import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.store.samples.StoreHealth;
import rindward.controller.task.TaskSupervisor;

/** All meters as Prometheus text. Safe for any thread. */
public final class Scrape {
  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final TickTimes ticks = new TickTimes();
  private final OutputMeters outputs;
  private final ProbeMeters probes;

  /**
   * @param altitudeM height above the sea, for the dew point
   * @param probes names of all probes
   * @param latestOf the latest of a probe
   * @param nanos the monotonic clock by which readings are taken
   * @param store the database's file
   * @param tasks everything that runs by itself; what comes under supervision later is not counted
   * @param ways every channel and connection by which the shed reaches somebody
   */
  public Scrape(
      List<Room> rooms,
      double altitudeM,
      List<String> probes,
      Function<String, ProbeReading> latestOf,
      LongSupplier nanos,
      Supplier<@Nullable ShedSnapshot> latest,
      AlarmTable table,
      Supplier<LotNotes> lots,
      List<DeliveryChannel> ways,
      Path store,
      Supplier<StoreHealth> health,
      TaskSupervisor tasks) {
    this.outputs = new OutputMeters(rooms);
    this.probes = new ProbeMeters(probes, latestOf, nanos);
    for (MeterBinder binder :
        List.of(
            new ShedMetrics(rooms, altitudeM, latest),
            outputs,
            this.probes,
            new CallMetrics(table, latest, lots, ways),
            new StoreMetrics(store, health),
            new TaskMetrics(tasks),
            ticks,
            new JvmMemoryMetrics(),
            new JvmThreadMetrics(),
            new UptimeMetrics())) {
      binder.bindTo(registry);
    }
  }

  /** Notes a tick. For the control thread. */
  public void ticked(ShedSnapshot snapshot) {
    ticks.note(snapshot.took());
    outputs.note(snapshot);
    probes.note();
  }

  /** Returns the meters in the Prometheus text format. */
  public String text() {
    return registry.scrape();
  }
}
