package rindward.hardware.wired;

import rindward.hardware.Probe;
import rindward.hardware.linux.KernelProbe;

/**
 * A sensor that a driver of the kernel reads.
 *
 * @param door how the kernel shows it
 * @param device its name, as "sht3x", or its place on a bus, as "1-0044"
 */
public record KernelDriver(Door door, String device) implements ProbeDriver {

  /** The two ways in which the kernel shows sensors. */
  public enum Door {
    HWMON,
    IIO
  }

  @Override
  public String word() {
    return door == Door.HWMON ? "hwmon" : "iio";
  }

  @Override
  public String place() {
    return "device " + device;
  }

  /** Each device waits for itself alone: what they share, the kernel looks after. */
  @Override
  public String bus() {
    return word() + "-" + device;
  }

  @Override
  public boolean hasHumidity() {
    return true;
  }

  @Override
  public Probe open(String probe, Parts parts) {
    return switch (door) {
      case HWMON -> KernelProbe.hwmon(probe, parts.machine().sysfs(), device);
      case IIO -> KernelProbe.iio(probe, parts.machine().sysfs(), device);
    };
  }
}
