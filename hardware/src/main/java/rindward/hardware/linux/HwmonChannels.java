package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;

/**
 * What a hwmon driver writes: {@code temp1_input} in thousandths of a degree C and, where there is
 * one, {@code humidity1_input} in thousandths of a percent (kernel documentation,
 * hwmon/sysfs-interface).
 */
final class HwmonChannels {
  private HwmonChannels() {}

  static Reading read(Path folder) throws IOException {
    requireOff(folder.resolve("temp1_fault"), "its driver reports a fault");
    requireOff(folder.resolve("heater_enable"), "its heater is on; write 0 to its heater_enable");
    Path humidity = folder.resolve("humidity1_input");
    @Nullable Double humidityMilliPct = Files.exists(humidity) ? SysfsText.number(humidity) : null;
    return KernelReading.of(SysfsText.number(folder.resolve("temp1_input")), humidityMilliPct);
  }

  private static void requireOff(Path flag, String otherwise) throws IOException {
    if (Files.exists(flag) && SysfsText.number(flag) != 0) {
      throw new IOException(otherwise);
    }
  }
}
