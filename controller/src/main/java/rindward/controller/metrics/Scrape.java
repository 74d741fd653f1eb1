package rindward.controller.metrics;

import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.room.Room;
import rindward.controller.snapshot.Snapshot;

/** All meters as Prometheus text. Safe for any thread. */
public final class Scrape {
  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);

  public Scrape(List<Room> rooms, Supplier<@Nullable Snapshot> latest) {
    new ShedMetrics(rooms, latest).bindTo(registry);
    new JvmMemoryMetrics().bindTo(registry);
    new JvmThreadMetrics().bindTo(registry);
    new UptimeMetrics().bindTo(registry);
  }

  /** Returns the meters in the Prometheus text format. */
  public String text() {
    return registry.scrape();
  }
}
