package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.ToDoubleFunction;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.store.samples.StoreHealth;

/** Binds the store: how large it is, and what has not reached it yet. */
final class StoreMetrics implements MeterBinder {
  private final Path file;
  private final ControlView control;

  StoreMetrics(Path file, ControlView control) {
    this.file = file;
    this.control = control;
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    Gauge.builder("rindward.store.bytes", this::bytes)
        .description("size of the database, its write-ahead log included")
        .baseUnit("bytes")
        .register(registry);
    Gauge.builder("rindward.store.held.samples", () -> of(control, StoreHealth::heldSamples))
        .description("samples in memory that the last flush could not write")
        .register(registry);
    FunctionCounter.builder(
            "rindward.store.lost.samples", control, c -> of(c, StoreHealth::lostSamples))
        .description("samples given up since the start")
        .register(registry);
  }

  private static double of(ControlView control, ToDoubleFunction<StoreHealth> value) {
    ControlReport report = control.latest();
    return report == null ? 0 : value.applyAsDouble(report.store());
  }

  private double bytes() {
    return size(file) + size(file.resolveSibling(file.getFileName() + "-wal"));
  }

  private static long size(Path path) {
    try {
      return Files.exists(path) ? Files.size(path) : 0;
    } catch (IOException e) {
      return 0;
    }
  }
}
