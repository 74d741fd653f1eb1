package rindward.hardware.sensor;

import java.io.IOException;
import java.io.InterruptedIOException;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

/**
 * A probe on an I2C bus. After any failure the next read begins with a soft reset; after every
 * {@link #FAILURES_TO_REOPEN} in a row the bus is let go and opened again first. For the one thread
 * that works the bus.
 */
public final class I2cProbe implements Probe {
  /** Failures in a row after which the bus is opened again. */
  public static final int FAILURES_TO_REOPEN = 3;

  private final String name;
  private final I2cDevice device;
  private final I2cSensor sensor;
  private final Pause pause;
  private boolean isPrepared;
  private int failures;

  private I2cProbe(String name, I2cDevice device, I2cSensor sensor, Pause pause) {
    this.name = name;
    this.device = device;
    this.sensor = sensor;
    this.pause = pause;
  }

  /** Returns a probe of the SHT3x family; its usual address is 0x44 or 0x45. */
  public static I2cProbe sht3x(String name, I2cDevice device, Pause pause) {
    return new I2cProbe(name, device, new ShtSensor(ShtFamily.SHT3X), pause);
  }

  /** Returns a probe of the SHT4x family; its usual address is 0x44. */
  public static I2cProbe sht4x(String name, I2cDevice device, Pause pause) {
    return new I2cProbe(name, device, new ShtSensor(ShtFamily.SHT4X), pause);
  }

  /** Returns a BME280; its address is 0x76 or 0x77. */
  public static I2cProbe bme280(String name, I2cDevice device, Pause pause) {
    return new I2cProbe(name, device, new Bme280Sensor(), pause);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Reading read() throws IOException {
    try {
      if (!isPrepared) {
        sensor.prepare(device, pause);
        isPrepared = true;
      }
      Reading reading = sensor.measure(device, pause);
      failures = 0;
      return reading;
    } catch (InterruptedIOException e) {
      isPrepared = false;
      throw e;
    } catch (IOException e) {
      isPrepared = false;
      failures++;
      if (failures % FAILURES_TO_REOPEN == 0) {
        device.reopen();
      }
      throw new IOException("probe " + name + " at " + device.place() + ": " + e.getMessage(), e);
    }
  }
}
