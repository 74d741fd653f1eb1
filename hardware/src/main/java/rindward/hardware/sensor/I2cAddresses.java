package rindward.hardware.sensor;

import java.io.IOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Hands out the devices of one bus and sees to it that no two answer to one call. Two sensors of
 * one address do not fail: they speak at once, or one room is read for the other. So an address is
 * given once; one that stands on the bus itself is not given behind its multiplexer; and there is
 * one multiplexer a bus. Used while the board is opened; for one thread.
 */
public final class I2cAddresses {
  private static final int LOWEST = 0x08;
  private static final int HIGHEST = 0x77;
  private static final int LOWEST_MULTIPLEXER = 0x70;
  private static final int ON_THE_BUS = -1;

  private final I2cBus bus;
  private final Map<Claim, String> owners = new HashMap<>();
  private @Nullable I2cMultiplexer multiplexer;
  private int multiplexerAddress;

  private record Claim(int channel, int address) {}

  public I2cAddresses(I2cBus bus) {
    this.bus = bus;
  }

  /**
   * Gives a device that hangs on the bus itself.
   *
   * @param probe the name of the probe it is for
   * @throws IOException when the address is out of range or taken, or the bus cannot be opened
   */
  public I2cDevice onBus(String probe, int address) throws IOException {
    claim("probe " + probe, ON_THE_BUS, address, LOWEST);
    return bus.device(address);
  }

  /**
   * Gives a device behind a multiplexer.
   *
   * @param probe the name of the probe it is for
   * @param multiplexerAddress 0x70..0x77, the same for all of this bus
   * @param channel 0..7
   * @throws IOException when an address or the channel is out of range or taken, or the bus cannot
   *     be opened
   */
  public I2cDevice behind(String probe, int multiplexerAddress, int channel, int address)
      throws IOException {
    if (channel < 0 || channel >= I2cMultiplexer.CHANNELS) {
      throw new IOException(
          "channel of probe " + probe + " was " + channel + " but it must be 0 to 7");
    }
    I2cMultiplexer there = multiplexer(probe, multiplexerAddress);
    claim("probe " + probe, channel, address, LOWEST);
    return there.channel(channel).device(address);
  }

  private I2cMultiplexer multiplexer(String probe, int address) throws IOException {
    I2cMultiplexer known = multiplexer;
    if (known == null) {
      claim("the multiplexer of probe " + probe, ON_THE_BUS, address, LOWEST_MULTIPLEXER);
      known = new I2cMultiplexer(bus, address);
      multiplexer = known;
      multiplexerAddress = address;
    } else if (address != multiplexerAddress) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "multiplexer of probe %s was 0x%02X but it must be 0x%02X: one multiplexer a bus",
              probe,
              address,
              multiplexerAddress));
    }
    return known;
  }

  private void claim(String owner, int channel, int address, int lowest) throws IOException {
    if (address < lowest || address > HIGHEST) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "address of %s was 0x%02X but it must be 0x%02X to 0x%02X",
              owner,
              address,
              lowest,
              HIGHEST));
    }
    for (Map.Entry<Claim, String> known : owners.entrySet()) {
      Claim other = known.getKey();
      boolean meets =
          other.channel == channel || other.channel == ON_THE_BUS || channel == ON_THE_BUS;
      if (meets && other.address == address) {
        throw new IOException(
            String.format(
                Locale.ROOT,
                "address of %s was 0x%02X but it must not be that of %s too",
                owner,
                address,
                known.getValue()));
      }
    }
    owners.put(new Claim(channel, address), owner);
  }
}
