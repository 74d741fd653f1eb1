package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/**
 * A sensor that a hwmon driver reads: {@code temp1_input} in thousandths of a degree C and, where
 * there is one, {@code humidity1_input} in thousandths of a percent (kernel documentation,
 * hwmon/sysfs-interface). The folder is looked up anew at every read, because its number changes
 * when a driver is loaded again. For the one thread that works its bus.
 */
public final class HwmonProbe implements Probe {
  private static final Path DEVICES = Path.of("class", "hwmon");

  private final String name;
  private final Path devices;
  private final String device;

  /**
   * @param sysfs usually {@code /sys}
   * @param device its {@code name}, as "sht3x", or its place on a bus, as "1-0044"
   */
  public HwmonProbe(String name, Path sysfs, String device) {
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
      requireOff(folder.resolve("temp1_fault"), "its driver reports a fault");
      requireOff(folder.resolve("heater_enable"), "its heater is on; write 0 to its heater_enable");
      Path humidity = folder.resolve("humidity1_input");
      @Nullable Double humidityMilliPct =
          Files.exists(humidity) ? SysfsText.number(humidity) : null;
      return KernelReading.of(SysfsText.number(folder.resolve("temp1_input")), humidityMilliPct);
    } catch (IOException e) {
      throw new IOException("probe " + name + " (hwmon " + device + "): " + e.getMessage(), e);
    }
  }

  private static void requireOff(Path flag, String otherwise) throws IOException {
    if (Files.exists(flag) && SysfsText.number(flag) != 0) {
      throw new IOException(otherwise);
    }
  }
}
