package rindward.controller.metrics;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** How long ticks take, as a histogram. Noting one costs the control thread next to nothing. */
final class TickTimes implements MeterBinder {
  private volatile @Nullable Timer timer;

  @Override
  public void bindTo(MeterRegistry registry) {
    timer =
        Timer.builder("rindward.tick")
            .description("how long a tick took")
            .serviceLevelObjectives(
                Duration.ofMillis(1),
                Duration.ofMillis(5),
                Duration.ofMillis(20),
                Duration.ofMillis(50),
                Duration.ofMillis(100),
                Duration.ofMillis(250),
                Duration.ofMillis(800),
                Duration.ofSeconds(2))
            .register(registry);
  }

  void note(Duration took) {
    Timer bound = timer;
    if (bound != null) {
      bound.record(took);
    }
  }
}
