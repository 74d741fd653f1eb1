package rindward.hardware.linux;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;

/**
 * The board's watchdog: hardware that resets the board when nobody feeds it for a while. <b>Opening
 * it arms it</b>, so it is opened only when the settings ask for it, and fed only after a complete
 * healthy tick. {@link #close()} writes the magic character first, which disarms it; a process that
 * dies does not, and the board starts anew (kernel documentation, watchdog-api). For one thread.
 */
public final class HardwareWatchdog implements AutoCloseable {
  private static final int FOOD = 0;
  private static final int MAGIC = 'V';

  /** What a tick may be late before the board resets. */
  private static final Duration MARGIN = Duration.ofSeconds(5);

  private final Path device;
  private final OutputStream stream;
  private final boolean cannotBeStopped;

  private HardwareWatchdog(Path device, OutputStream stream, boolean cannotBeStopped) {
    this.device = device;
    this.stream = stream;
    this.cannotBeStopped = cannotBeStopped;
  }

  /**
   * Arms the watchdog. Its time-out is whatever the board has, because only a native call could set
   * it; it is looked up first, so that a watchdog too short for the tick is never armed.
   *
   * @param device usually {@code /dev/watchdog}
   * @param sysfs usually {@code /sys}
   * @param tick how often it will be fed
   * @throws IOException when its time-out is unknown or shorter than a tick and 5 s, or it cannot
   *     be opened, as when another program (often the service manager) holds it
   */
  public static HardwareWatchdog arm(Path device, Path sysfs, Duration tick) throws IOException {
    String file = device.getFileName().toString();
    String number = file.equals("watchdog") ? "watchdog0" : file;
    Path facts = sysfs.resolve("class").resolve("watchdog").resolve(number);
    Duration timeout = Duration.ofSeconds((long) SysfsText.number(facts.resolve("timeout")));
    if (timeout.compareTo(tick.plus(MARGIN)) < 0) {
      throw new IOException(
          "the time-out of "
              + device
              + " was "
              + timeout.toSeconds()
              + " s but it must be at least a tick and "
              + MARGIN.toSeconds()
              + " s, here "
              + tick.plus(MARGIN).toSeconds()
              + " s; choose a shorter tick");
    }
    Path noWayOut = facts.resolve("nowayout");
    boolean cannotBeStopped = Files.exists(noWayOut) && SysfsText.number(noWayOut) != 0;
    try {
      return new HardwareWatchdog(
          device, Files.newOutputStream(device, StandardOpenOption.WRITE), cannotBeStopped);
    } catch (IOException e) {
      throw new IOException(
          "the watchdog " + device + " cannot be opened; another program may hold it", e);
    }
  }

  /** Tells whether the board resets even after a clean stop, because its kernel was built so. */
  public boolean cannotBeStopped() {
    return cannotBeStopped;
  }

  /**
   * Puts the reset off by one time-out.
   *
   * @throws IOException when the watchdog is gone
   */
  public void feed() throws IOException {
    stream.write(FOOD);
  }

  /**
   * Disarms the watchdog; for a clean stop only.
   *
   * @throws IOException when that is not certain, so that the board may reset
   */
  @Override
  public void close() throws IOException {
    try (stream) {
      stream.write(MAGIC);
    } catch (IOException e) {
      throw new IOException("the watchdog " + device + " may still be armed", e);
    }
  }
}
