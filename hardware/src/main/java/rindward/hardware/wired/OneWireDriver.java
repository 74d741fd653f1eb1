package rindward.hardware.wired;

import java.io.IOException;
import java.util.Optional;
import rindward.hardware.Probe;
import rindward.hardware.linux.OneWireProbe;
import rindward.hardware.sensor.SensorFamily;

/**
 * A DS18B20 on the 1-Wire bus.
 *
 * @param serial as the kernel writes it: {@code 28-0316a2791bff}
 */
public record OneWireDriver(String serial) implements ProbeDriver {
  @Override
  public String word() {
    return "1-wire";
  }

  @Override
  public String place() {
    return "1-Wire " + serial;
  }

  @Override
  public String bus() {
    return "1-wire";
  }

  @Override
  public Optional<SensorFamily> family() {
    return Optional.of(SensorFamily.DS18B20);
  }

  @Override
  public boolean hasHumidity() {
    return false;
  }

  @Override
  public Probe open(String probe, Parts parts) throws IOException {
    return new OneWireProbe(probe, parts.machine().sysfs(), serial, parts.machine().clock());
  }
}
