package rindward.controller.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.wired.Simulated;

/** Whether the parts of a settings file can work together. */
final class PartsCheck {
  private PartsCheck() {}

  /** One probe or output, as far as it matters here. */
  private record Part(String section, String name, boolean isSimulated, boolean needsBroker) {
    String path() {
      return section + "." + name;
    }
  }

  static void check(
      TableReader top,
      List<ProbeSetting> probes,
      List<OutputSetting> outputs,
      @Nullable BrokerSetting broker) {
    List<Part> parts = new ArrayList<>();
    for (ProbeSetting probe : probes) {
      boolean isSimulated = probe.driver() instanceof Simulated;
      parts.add(new Part("probes", probe.name(), isSimulated, probe.driver().needsBroker()));
    }
    for (OutputSetting output : outputs) {
      boolean isSimulated = output.driver() instanceof Simulated;
      parts.add(new Part("outputs", output.name(), isSimulated, output.driver().needsBroker()));
    }
    if (top.problems().isEmpty()) {
      refuseMixture(top, parts);
    }
    Optional<Part> speaker = parts.stream().filter(Part::needsBroker).findFirst();
    if (speaker.isPresent() && broker == null && !top.has("broker")) {
      top.missing(
          "broker",
          "it must be a table [broker] with host = \"...\", because "
              + speaker.get().path()
              + " speaks MQTT");
    }
  }

  /** An invented thermometer must not switch a real heater, nor a real one an invented heater. */
  private static void refuseMixture(TableReader top, List<Part> parts) {
    Optional<Part> simulated = parts.stream().filter(Part::isSimulated).findFirst();
    Optional<Part> real = parts.stream().filter(p -> !p.isSimulated()).findFirst();
    if (simulated.isPresent() && real.isPresent()) {
      top.conflict(
          "simulated",
          "it must be a real part as that of "
              + real.get().path()
              + " is: a simulated shed and a real one know nothing of each other",
          simulated.get().section(),
          simulated.get().name(),
          "driver");
    }
  }
}
