package rindward.controller.metrics;

import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.room.Room;
import rindward.controller.snapshot.Snapshot;
import rindward.controller.store.StoreHealth;
import rindward.controller.watch.LotNotes;

/** All meters as Prometheus text. Safe for any thread. */
public final class Scrape {
  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final TickTimes ticks = new TickTimes();

  /**
   * @param store the database's file
   * @param ways every channel and connection by which the shed reaches somebody
   */
  public Scrape(
      List<Room> rooms,
      Supplier<@Nullable Snapshot> latest,
      AlarmTable table,
      Supplier<LotNotes> lots,
      List<Way> ways,
      Path store,
      Supplier<StoreHealth> health) {
    for (MeterBinder binder :
        List.of(
            new ShedMetrics(rooms, latest),
            new CallMetrics(table, latest, lots, ways),
            new StoreMetrics(store, health),
            ticks,
            new JvmMemoryMetrics(),
            new JvmThreadMetrics(),
            new UptimeMetrics())) {
      binder.bindTo(registry);
    }
  }

  /** Notes how long a tick took. */
  public void ticked(Duration took) {
    ticks.note(took);
  }

  /** Returns the meters in the Prometheus text format. */
  public String text() {
    return registry.scrape();
  }
}
