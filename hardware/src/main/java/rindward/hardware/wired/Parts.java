package rindward.hardware.wired;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.hardware.mqtt.Broker;
import rindward.hardware.sensor.I2cAddresses;

/** What the drivers of one board share while it is opened. For one thread. */
public final class Parts {
  private final Machine machine;
  private final @Nullable Broker broker;
  private final Map<Integer, I2cAddresses> addresses = new HashMap<>();

  Parts(Machine machine, @Nullable Broker broker) {
    this.machine = machine;
    this.broker = broker;
  }

  Machine machine() {
    return machine;
  }

  /** Returns who gives out the addresses of an I2C bus, the same for all of its probes. */
  I2cAddresses addresses(int bus) {
    return addresses.computeIfAbsent(bus, number -> new I2cAddresses(machine.i2c(number)));
  }

  Broker broker() throws IOException {
    if (broker == null) {
      throw new IOException("no broker is named, but a part speaks MQTT");
    }
    return broker;
  }
}
