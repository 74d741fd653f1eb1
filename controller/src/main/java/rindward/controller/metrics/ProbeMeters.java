package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.LongSupplier;
import rindward.controller.room.ProbeReading;

/**
 * Binds each probe: how old its value is, and in how many ticks it gave none that could be used.
 * {@link #note} is for the control thread.
 */
final class ProbeMeters implements MeterBinder {
  private final Function<String, ProbeReading> latestOf;
  private final LongSupplier nanos;
  private final Map<String, AtomicLong> errors = new LinkedHashMap<>();

  /**
   * @param latestOf the latest of a probe
   * @param nanos the monotonic clock by which readings are taken
   */
  ProbeMeters(List<String> probes, Function<String, ProbeReading> latestOf, LongSupplier nanos) {
    this.latestOf = latestOf;
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
  void note() {
    errors.forEach(
        (probe, count) -> {
          if (latestOf.apply(probe).failure() != null) {
            count.incrementAndGet();
          }
        });
  }

  private double ageSeconds(String probe) {
    ProbeReading latest = latestOf.apply(probe);
    return latest.reading() == null ? Double.NaN : (nanos.getAsLong() - latest.takenNanos()) / 1e9;
  }
}
