package rindward.controller.daemon;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.hardware.Relay;

/**
 * The relays, by name. A relay that cannot be switched costs nothing but itself. Confined to the
 * control loop thread.
 */
final class Switchboard {
  private static final Logger LOG = LoggerFactory.getLogger(Switchboard.class);

  private final Map<String, Relay> relays;

  Switchboard(Map<String, Relay> relays) {
    this.relays = new LinkedHashMap<>(relays);
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
