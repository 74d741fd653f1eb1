package rindward.hardware.wired;

import java.io.IOException;
import rindward.hardware.Probe;
import rindward.hardware.mqtt.NetworkProbe;
import rindward.hardware.mqtt.NetworkProbeSettings;

/** A probe that publishes its values to the broker. */
public record NetworkProbeDriver(NetworkProbeSettings settings) implements ProbeDriver {
  @Override
  public String word() {
    return "mqtt";
  }

  @Override
  public String place() {
    return "topic " + settings.topic();
  }

  @Override
  public String bus() {
    return "broker";
  }

  @Override
  public boolean hasHumidity() {
    return settings.humidity() != null;
  }

  @Override
  public boolean needsBroker() {
    return true;
  }

  @Override
  public Probe open(String probe, Parts parts) throws IOException {
    return new NetworkProbe(
        settings, parts.broker(), parts.machine().clock(), parts.machine().wallClock());
  }
}
