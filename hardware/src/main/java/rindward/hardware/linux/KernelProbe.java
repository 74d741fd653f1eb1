package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Path;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/**
 * A sensor that a driver of the kernel reads, through hwmon or industrial I/O. Its folder is looked
 * up anew at every read, because its number changes when a driver is loaded again. For the one
 * thread that works its bus.
 */
public final class KernelProbe implements Probe {
  private static final Path HWMON_DEVICES = Path.of("class", "hwmon");
  private static final Path IIO_DEVICES = Path.of("bus", "iio", "devices");

  private final String name;
  private final String interfaceName;
  private final Path devices;
  private final String device;
  private final Channels channels;

  /** Reads what lies in the folder of a device. */
  @FunctionalInterface
  private interface Channels {
    Reading read(Path folder) throws IOException;
  }

  private KernelProbe(
      String name, String interfaceName, Path devices, String device, Channels channels) {
    this.name = name;
    this.interfaceName = interfaceName;
    this.devices = devices;
    this.device = device;
    this.channels = channels;
  }

  /**
   * Returns a sensor behind hwmon.
   *
   * @param sysfs usually {@code /sys}
   * @param device its {@code name}, as "sht3x", or its place on a bus, as "1-0044"
   */
  public static KernelProbe hwmon(String name, Path sysfs, String device) {
    return new KernelProbe(
        name, "hwmon", sysfs.resolve(HWMON_DEVICES), device, HwmonChannels::read);
  }

  /**
   * Returns a sensor behind industrial I/O.
   *
   * @param sysfs usually {@code /sys}
   * @param device its {@code name}, as "bme280", or its place on a bus, as "1-0076"
   */
  public static KernelProbe iio(String name, Path sysfs, String device) {
    return new KernelProbe(name, "IIO", sysfs.resolve(IIO_DEVICES), device, IioChannels::read);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Reading read() throws IOException {
    try {
      return channels.read(SysfsDevice.find(devices, device));
    } catch (IOException e) {
      throw new IOException(
          "probe " + name + " (" + interfaceName + " " + device + "): " + e.getMessage(), e);
    }
  }
}
