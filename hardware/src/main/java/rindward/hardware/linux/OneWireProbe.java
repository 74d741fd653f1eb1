package rindward.hardware.linux;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.sensor.Ds18b20Judge;
import rindward.hardware.sensor.W1SlaveText;

/**
 * A DS18B20 on a 1-Wire bus, read by the kernel's {@code w1_therm}. The file {@code w1_slave} is
 * preferred because it shows the bytes, by which a bus that is held low is known; a kernel without
 * it has {@code temperature}. For the one thread that works the bus, since a reading takes it for
 * 0.75 s.
 */
public final class OneWireProbe implements Probe {
  private static final Path DEVICES = Path.of("bus", "w1", "devices");
  private static final Pattern SERIAL = Pattern.compile("28-[0-9a-f]{12}");

  /** The driver tries a conversion of 0.75 s up to five times. */
  private static final Duration LONGEST_READ = Duration.ofSeconds(5);

  private final String name;
  private final Path devices;
  private final String serial;
  private final MonotonicClock clock;
  private final Ds18b20Judge judge = new Ds18b20Judge();

  /**
   * @param sysfs usually {@code /sys}
   * @param serial as the kernel writes it, family code 28 first: {@code 28-0316a2791bff}
   * @param clock tells how long a reading took
   * @throws IOException when the serial is not that of a DS18B20
   */
  public OneWireProbe(String name, Path sysfs, String serial, MonotonicClock clock)
      throws IOException {
    if (!SERIAL.matcher(serial).matches()) {
      throw new IOException(
          "serial of probe "
              + name
              + " was '"
              + serial
              + "' but it must be that of a DS18B20, as 28-0316a2791bff");
    }
    this.name = name;
    this.devices = sysfs.resolve(DEVICES);
    this.serial = serial;
    this.clock = clock;
  }

  @Override
  public String name() {
    return name;
  }

  /**
   * Reads once. A value that took longer than 5 s is refused: nobody knows when it was measured.
   */
  @Override
  public Reading read() throws IOException {
    try {
      long before = clock.nanos();
      int milliC = measure();
      Duration took = Duration.ofNanos(clock.nanos() - before);
      if (took.compareTo(LONGEST_READ) > 0) {
        throw new IOException(
            String.format(
                Locale.ROOT,
                "it took %.1f s but must take at most %d s; check its power",
                took.toMillis() / 1000.0,
                LONGEST_READ.toSeconds()));
      }
      return Reading.ofTemperature(milliC / 1000.0);
    } catch (IOException e) {
      throw new IOException("probe " + name + " (1-Wire " + serial + "): " + e.getMessage(), e);
    }
  }

  private int measure() throws IOException {
    Path device = devices.resolve(serial);
    if (!Files.isDirectory(device)) {
      throw new IOException("it is not on the bus; the bus has " + present());
    }
    Path text = device.resolve("w1_slave");
    if (Files.exists(text)) {
      return judge.believe(W1SlaveText.parse(SysfsText.read(text)).temperatureMilliC(), true);
    }
    // Empty while a conversion of the whole bus runs, which is then no number.
    return judge.believe((int) SysfsText.number(device.resolve("temperature")), false);
  }

  private String present() {
    if (!Files.isDirectory(devices)) {
      return "no 1-Wire driver loaded";
    }
    try (Stream<Path> found = Files.list(devices)) {
      String serials =
          found
              .map(p -> p.getFileName().toString())
              .filter(s -> SERIAL.matcher(s).matches())
              .sorted()
              .collect(Collectors.joining(", "));
      return serials.isEmpty() ? "no DS18B20 at all" : serials;
    } catch (IOException e) {
      return "a folder that cannot be listed (" + e.getMessage() + ")";
    }
  }
}
