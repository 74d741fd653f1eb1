package rindward.hardware.wired;

import java.io.IOException;
import rindward.hardware.Relay;
import rindward.hardware.mqtt.NetworkRelay;
import rindward.hardware.mqtt.NetworkRelaySettings;

/** A relay that takes commands from the broker. */
public record NetworkRelayDriver(NetworkRelaySettings settings) implements RelayDriver {
  @Override
  public String word() {
    return "mqtt";
  }

  @Override
  public String place() {
    return "topic " + settings.commandTopic();
  }

  @Override
  public boolean needsBroker() {
    return true;
  }

  @Override
  public Relay openOff(String relay, Parts parts) throws IOException {
    return new NetworkRelay(settings, parts.broker(), parts.machine().clock());
  }
}
