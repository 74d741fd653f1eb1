package rindward.hardware.mqtt;

import java.io.IOException;
import java.time.Duration;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Relay;

/**
 * A relay that takes commands by MQTT. Each tick repeats the command, so that the relay knows we
 * are alive, and looks at what the relay says it does. Switching never waits for the network: a
 * command that has just changed has {@link #CONFIRM} to be confirmed, and from then on a state that
 * does not come or does not fit is told.
 *
 * <p>A command that the broker keeps would be replayed at every reconnection of the relay. Ours are
 * never kept; while somebody else's is, this relay is not switched on. Confined to the control loop
 * thread.
 */
public final class NetworkRelay implements Relay {
  /** How long a relay may take to say that it has switched. */
  static final Duration CONFIRM = Duration.ofSeconds(10);

  /** A command that could not go out by then is no longer meant. */
  private static final Duration VALID = Duration.ofSeconds(15);

  private final NetworkRelaySettings settings;
  private final Broker broker;
  private final MonotonicClock clock;
  private boolean isCommandedOn;
  private long commandedNanos;

  /** Listens to the relay's topics. */
  public NetworkRelay(NetworkRelaySettings settings, Broker broker, MonotonicClock clock) {
    this.settings = settings;
    this.broker = broker;
    this.clock = clock;
    commandedNanos = clock.nanos();
    broker.listen(settings.stateTopic());
    broker.listen(settings.commandTopic());
  }

  @Override
  public String name() {
    return settings.name();
  }

  @Override
  public void set(boolean on) throws IOException {
    boolean isKept = broker.isKept(settings.commandTopic());
    boolean isOn = on && !isKept;
    if (isOn != isCommandedOn) {
      isCommandedOn = isOn;
      commandedNanos = clock.nanos();
    }
    broker.command(settings.commandTopic(), isOn ? settings.on() : settings.off(), VALID.toNanos());
    if (isKept) {
      throw new IOException(
          says(
              "the broker keeps a command on "
                  + settings.commandTopic()
                  + " that would be replayed; delete it, and never retain commands"));
    }
    if (clock.nanos() - commandedNanos > CONFIRM.toNanos()) {
      checkState(isOn);
    }
  }

  private void checkState(boolean isOn) throws IOException {
    Incoming message = broker.latest(settings.stateTopic());
    if (message == null || message.isRetained()) {
      throw new IOException(
          says(broker.trouble().isEmpty() ? "it has not said what it does" : broker.trouble()));
    }
    Duration age = Duration.ofNanos(clock.nanos() - message.arrivedNanos());
    if (age.compareTo(settings.maxAge()) > 0) {
      throw new IOException(says("it has been silent for " + age.toSeconds() + " s"));
    }
    String state = settings.state().text(message.text());
    if (!state.equals(isOn ? settings.on() : settings.off())) {
      throw new IOException(
          says("it was switched " + (isOn ? "on" : "off") + " but says '" + state + "'"));
    }
  }

  private String says(String what) {
    return "relay " + settings.name() + ": " + what;
  }
}
