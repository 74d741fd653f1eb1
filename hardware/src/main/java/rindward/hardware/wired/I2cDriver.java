package rindward.hardware.wired;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Probe;
import rindward.hardware.sensor.I2cAddresses;
import rindward.hardware.sensor.I2cDevice;
import rindward.hardware.sensor.I2cProbe;
import rindward.hardware.sensor.SensorFamily;

/**
 * A sensor on an I2C bus.
 *
 * @param part one of the families that speak I2C
 * @param busNumber the N of {@code /dev/i2c-N}
 * @param address 0x08..0x77
 * @param branch the multiplexer's channel that it hangs on; null on the bus itself
 */
public record I2cDriver(SensorFamily part, int busNumber, int address, @Nullable Branch branch)
    implements ProbeDriver {

  /**
   * One channel of a multiplexer.
   *
   * @param multiplexer its address, 0x70..0x77
   * @param channel 0..7
   */
  public record Branch(int multiplexer, int channel) {}

  @Override
  public String word() {
    return part.word();
  }

  @Override
  public String place() {
    String behind =
        branch == null
            ? ""
            : String.format(
                Locale.ROOT, ", channel %d of 0x%02X", branch.channel, branch.multiplexer);
    return String.format(Locale.ROOT, "0x%02X on I2C bus %d%s", address, busNumber, behind);
  }

  @Override
  public String bus() {
    return "i2c-" + busNumber;
  }

  @Override
  public Optional<SensorFamily> family() {
    return Optional.of(part);
  }

  @Override
  public boolean hasHumidity() {
    return true;
  }

  /**
   * Takes the address for a probe.
   *
   * @param addresses those of this driver's bus
   * @throws IOException when an address or the channel is out of range or taken
   */
  public I2cDevice claim(String probe, I2cAddresses addresses) throws IOException {
    return branch == null
        ? addresses.onBus(probe, address)
        : addresses.behind(probe, branch.multiplexer, branch.channel, address);
  }

  @Override
  public Probe open(String probe, Parts parts) throws IOException {
    I2cDevice device = claim(probe, parts.addresses(busNumber));
    return switch (part) {
      case SHT3X -> I2cProbe.sht3x(probe, device, parts.machine().pause());
      case SHT4X -> I2cProbe.sht4x(probe, device, parts.machine().pause());
      case BME280 -> I2cProbe.bme280(probe, device, parts.machine().pause());
      case DS18B20 -> throw new IOException("probe " + probe + ": a DS18B20 does not speak I2C");
    };
  }
}
