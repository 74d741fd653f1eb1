package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/**
 * A sensor that a driver of the kernel's industrial I/O reads. A channel has either its value in
 * {@code _input}, or {@code _raw} with {@code _scale} and {@code _offset}, where (raw + offset) x
 * scale is the value: thousandths of a degree C and of a percent (kernel documentation,
 * sysfs-bus-iio). For the one thread that works its bus.
 */
public final class IioProbe implements Probe {
  private static final Path DEVICES = Path.of("bus", "iio", "devices");

  private final String name;
  private final Path devices;
  private final String device;

  /**
   * @param sysfs usually {@code /sys}
   * @param device its {@code name}, as "bme280", or its place on a bus, as "1-0076"
   */
  public IioProbe(String name, Path sysfs, String device) {
    this.name = name;
    this.devices = sysfs.resolve(DEVICES);
    this.device = device;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Reading read() throws IOException {
    try {
      Path folder = SysfsDevice.find(devices, device);
      Double temperature = channel(folder, "in_temp");
      if (temperature == null) {
        throw new IOException("it has no temperature: there is no in_temp_input or in_temp_raw");
      }
      return KernelReading.of(temperature, channel(folder, "in_humidityrelative"));
    } catch (IOException e) {
      throw new IOException("probe " + name + " (IIO " + device + "): " + e.getMessage(), e);
    }
  }

  /** Returns thousandths, or null when the device has no such channel. */
  private static @Nullable Double channel(Path folder, String channel) throws IOException {
    Path input = folder.resolve(channel + "_input");
    if (Files.exists(input)) {
      return SysfsText.number(input);
    }
    Path raw = folder.resolve(channel + "_raw");
    if (!Files.exists(raw)) {
      return null;
    }
    double offset = numberOr(0, folder.resolve(channel + "_offset"));
    double scale = numberOr(1, folder.resolve(channel + "_scale"));
    return (SysfsText.number(raw) + offset) * scale;
  }

  private static double numberOr(double otherwise, Path file) throws IOException {
    return Files.exists(file) ? SysfsText.number(file) : otherwise;
  }
}
