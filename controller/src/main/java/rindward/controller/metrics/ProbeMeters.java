package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.ProbeReading;

/**
 * Binds each probe: how old its value is, and in how many ticks it gave none that could be used.
 * {@link #note} is for the control thread.
 */
final class ProbeMeters implements MeterBinder {
  private final ControlView control;
  private final LongSupplier nanos;
  private final Map<String, AtomicLong> errors = new LinkedHashMap<>();

  /**
   * @param control tells of each probe
   * @param nanos the monotonic clock of this process
   */
  ProbeMeters(List<String> probes, ControlView control, LongSupplier nanos) {
    this.control = control;
    this.nanos = nanos;
    probes.forEach(probe -> errors.put(probe, new AtomicLong()));
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    errors.forEach(
        (probe, count) -> {
          Gauge.builder("rindward.probe.age.seconds", () -> ageSeconds(probe))
              .description("age of its last good value; NaN before the first")
              .tag("probe", probe)
              .register(registry);
          FunctionCounter.builder("rindward.probe.errors", count, AtomicLong::get)
              .description("ticks since the start in which it gave no value that could be used")
              .tag("probe", probe)
              .register(registry);
        });
  }

  /** Takes in a tick. */
  void note(ControlReport report) {
    errors.forEach(
        (probe, count) -> {
          if (report.reading(probe).failure() != null) {
            count.incrementAndGet();
          }
        });
  }

  private double ageSeconds(String probe) {
    ControlReport report = control.latest();
    if (report == null) {
      return Double.NaN;
    }
    ProbeReading latest = report.reading(probe);
    return latest.reading() == null ? Double.NaN : (nanos.getAsLong() - latest.takenNanos()) / 1e9;
  }
}
