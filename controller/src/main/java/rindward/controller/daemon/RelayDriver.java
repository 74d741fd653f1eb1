package rindward.controller.daemon;

import java.io.IOException;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.control.OutputDecision;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.Relay;

/**
 * The relays, by name. A relay that cannot be switched costs nothing but itself. Confined to the
 * control loop thread.
 */
final class RelayDriver {
  private static final Logger LOG = LoggerFactory.getLogger(RelayDriver.class);

  private final Map<String, Relay> relays;

  RelayDriver(Map<String, Relay> relays) {
    this.relays = new LinkedHashMap<>(relays);
  }

  /**
   * Switches a room's outputs as decided, the heater last: if the fan it needs cannot be switched
   * on, it goes off instead.
   *
   * @return for each output that is not as decided, why
   */
  Map<OutputKind, String> apply(Room room, Map<OutputKind, OutputDecision> rulings) {
    Map<OutputKind, String> failures = new EnumMap<>(OutputKind.class);
    for (Output output : room.outputs().values()) {
      if (output.kind() != OutputKind.HEATER) {
        set(output, isOn(rulings, output), failures);
      }
    }
    Output heater = room.outputs().get(OutputKind.HEATER);
    if (heater != null) {
      boolean on = isOn(rulings, heater);
      boolean lacksFan =
          room.heatTrust().needsFan() && failures.containsKey(OutputKind.CIRCULATION);
      set(heater, on && !lacksFan, failures);
      if (on && lacksFan) {
        failures.putIfAbsent(
            OutputKind.HEATER, "it is kept off because the fan that moves its heat has failed");
      }
    }
    return failures;
  }

  private void set(Output output, boolean on, Map<OutputKind, String> failures) {
    String failure = set(output.name(), on);
    if (failure != null) {
      failures.put(output.kind(), failure);
    }
  }

  private static boolean isOn(Map<OutputKind, OutputDecision> rulings, Output output) {
    OutputDecision ruling = rulings.get(output.kind());
    if (ruling == null) {
      throw new IllegalStateException("nothing was decided for output " + output.name());
    }
    return ruling.on();
  }

  /** Switches one output; returns why it could not be, or null. */
  @Nullable String set(String output, boolean on) {
    Relay relay = relays.get(output);
    if (relay == null) {
      return "no relay of that name was opened";
    }
    try {
      relay.set(on);
      return null;
    } catch (IOException | RuntimeException e) {
      return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
  }

  /** Switches everything off, whatever fails on the way. */
  void allOff() {
    relays.forEach(
        (name, relay) -> {
          String failure = set(name, false);
          if (failure != null) {
            LOG.error("Output {} may still be on: {}", name, failure);
          }
        });
  }
}
