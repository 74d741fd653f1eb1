package rindward.hardware.pi4j;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.i2c.I2C;
import com.pi4j.library.linuxfs.LinuxFile;
import com.pi4j.plugin.linuxfs.provider.i2c.LinuxFsI2CProvider;
import java.io.IOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import rindward.hardware.sensor.I2cBus;
import rindward.hardware.sensor.I2cDevice;

/**
 * One I2C bus, {@code /dev/i2c-1} on most boards. It is opened at the first transfer, and anew at
 * the first one after somebody asked for that. For the one thread that works the bus.
 *
 * <p>Pi4J 2.8 notes which address it has chosen before the kernel agrees. Where the kernel refuses
 * (a driver of its own holds the address), every later transfer would go to the sensor chosen
 * before, and one room would be read for the other. So a refused choice always opens the bus anew.
 */
public final class Pi4jI2cBus implements I2cBus, AutoCloseable {
  private final int number;
  private final Supplier<Context> contexts;
  private final Map<Integer, I2C> lines = new HashMap<>();
  private @Nullable Context context;

  Pi4jI2cBus(int number, Supplier<Context> contexts) {
    this.number = number;
    this.contexts = contexts;
  }

  /**
   * Returns bus {@code number}, not yet opened.
   *
   * @param number the N of {@code /dev/i2c-N}
   */
  public static Pi4jI2cBus of(int number) {
    return new Pi4jI2cBus(
        number,
        () ->
            Pi4J.newContextBuilder()
                .noAutoDetect()
                .disableShutdownHook()
                .add(LinuxFsI2CProvider.newInstance())
                .build());
  }

  @Override
  public I2cDevice device(int address) {
    return new Device(address);
  }

  /**
   * Lets go of the bus; a later transfer opens it again. Safe to call twice; called by another
   * thread only when the one that works the bus has stopped.
   */
  @Override
  public void close() {
    Context open = context;
    context = null;
    lines.clear();
    if (open != null) {
      open.shutdown();
    }
  }

  private I2C line(int address) throws IOException {
    I2C known = lines.get(address);
    if (known != null) {
      return known;
    }
    try {
      Context open = context;
      if (open == null) {
        open = contexts.get();
        context = open;
      }
      I2C line =
          open.create(
              I2C.newConfigBuilder(open)
                  .id("rindward-i2c-" + number + "-" + address)
                  .bus(number)
                  .device(address)
                  .build());
      lines.put(address, line);
      return line;
    } catch (RuntimeException | LinkageError e) {
      close();
      throw new IOException(
          "I2C bus "
              + number
              + " cannot be opened ("
              + Causes.sentence(e)
              + "); it must be enabled, and the user in the group i2c",
          e);
    }
  }

  private int transfer(int address, ToIntFunction<I2C> transfer) throws IOException {
    I2C line = line(address);
    try {
      return transfer.applyAsInt(line);
    } catch (RuntimeException e) {
      if (isRefusedChoice(e)) {
        close();
        throw new IOException(
            "the kernel does not let go of its address; a kernel driver may read this sensor", e);
      }
      throw new IOException("it does not answer (" + Causes.sentence(e) + ")", e);
    }
  }

  private static boolean isRefusedChoice(Throwable thrown) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof LinuxFile.LinuxFileException) {
        return true;
      }
    }
    return false;
  }

  /** The device at one address. */
  private final class Device implements I2cDevice {
    private final int address;

    Device(int address) {
      this.address = address;
    }

    @Override
    public String place() {
      return String.format(Locale.ROOT, "0x%02X on I2C bus %d", address, number);
    }

    @Override
    public void write(byte... bytes) throws IOException {
      int taken = transfer(address, line -> line.write(bytes, 0, bytes.length));
      if (taken != bytes.length) {
        throw new IOException("it took " + taken + " of " + bytes.length + " bytes");
      }
    }

    @Override
    public byte[] read(int count) throws IOException {
      byte[] bytes = new byte[count];
      int given = transfer(address, line -> line.read(bytes, 0, count));
      if (given != count) {
        throw new IOException("it gave " + Math.max(0, given) + " of " + count + " bytes");
      }
      return bytes;
    }

    @Override
    public void reopen() {
      Pi4jI2cBus.this.close();
    }
  }
}
