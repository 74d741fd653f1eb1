package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;

/**
 * What a driver of industrial I/O writes. A channel has either its value in {@code _input}, or
 * {@code _raw} with {@code _scale} and {@code _offset}, where (raw + offset) x scale is the value:
 * thousandths of a degree C and of a percent (kernel documentation, sysfs-bus-iio).
 */
final class IioChannels {
  private IioChannels() {}

  static Reading read(Path folder) throws IOException {
    Double temperature = channel(folder, "in_temp");
    if (temperature == null) {
      throw new IOException("it has no temperature: there is no in_temp_input or in_temp_raw");
    }
    return KernelReading.of(temperature, channel(folder, "in_humidityrelative"));
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
