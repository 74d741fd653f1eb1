package rindward.controller.metrics;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import rindward.controller.link.ChannelState;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;

/**
 * Counts each way by which the shed reaches somebody, from the first time that control tells of it.
 * Tags are bounded: channels of the settings.
 */
final class ChannelMeters {
  private final MeterRegistry registry;
  private final ControlView control;
  private final Set<String> bound = new HashSet<>();

  ChannelMeters(MeterRegistry registry, ControlView control) {
    this.registry = registry;
    this.control = control;
  }

  /** Looks for ways that were not told of before. */
  synchronized void look() {
    told().stream().map(ChannelState::name).filter(bound::add).forEach(this::bind);
  }

  private void bind(String name) {
    Gauge.builder(
            "rindward.channel.failing", () -> of(name, way -> way.trouble().isEmpty() ? 0 : 1))
        .description("1 while the channel does not take what is sent")
        .tag("channel", name)
        .register(registry);
    Gauge.builder("rindward.channel.waiting", () -> of(name, ChannelState::waiting))
        .description("messages that wait to go out")
        .tag("channel", name)
        .register(registry);
  }

  private double of(String name, ToDoubleFunction<ChannelState> value) {
    return told().stream()
        .filter(way -> way.name().equals(name))
        .mapToDouble(value)
        .findFirst()
        .orElse(Double.NaN);
  }

  private List<ChannelState> told() {
    ControlReport report = control.latest();
    return report == null ? List.of() : report.channels();
  }
}
