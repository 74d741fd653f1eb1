package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.hardware.Probe;

/** Two sensors of one address behind a multiplexer, at its lowest level: one bus of transfers. */
class I2cMultiplexerTest {
  private static final int MULTIPLEXER = 0x70;
  private static final int SENSOR = 0x44;

  private final FakeTime time = new FakeTime();
  private final FakeSht curing = new FakeSht(ShtFamily.SHT4X, time);
  private final FakeSht storage = new FakeSht(ShtFamily.SHT4X, time);
  private final Chip chip = new Chip();
  private Probe curingProbe;
  private Probe storageProbe;

  @BeforeEach
  void twoProbes() throws IOException {
    curing.frame = "6800 E3 B333 AB";
    storage.frame = "6666 93 8000 A2";
    I2cAddresses addresses = new I2cAddresses(chip::device);
    curingProbe =
        I2cProbe.sht4x("curing", addresses.behind("curing", MULTIPLEXER, 0, SENSOR), time);
    storageProbe =
        I2cProbe.sht4x("storage", addresses.behind("storage", MULTIPLEXER, 3, SENSOR), time);
  }

  @Test
  void eachProbe_readsItsOwnSensor() throws IOException {
    assertThat(curingProbe.read().temperatureMilliC()).isEqualTo(26_090);
    assertThat(storageProbe.read().temperatureMilliC()).isEqualTo(25_000);
    assertThat(curingProbe.read().temperatureMilliC()).isEqualTo(26_090);
  }

  @Test
  void channel_isChosenOnlyWhenItChanges() throws IOException {
    curingProbe.read();
    curingProbe.read();
    storageProbe.read();
    curingProbe.read();

    assertThat(chip.choices).containsExactly(1, 8, 1);
  }

  @Test
  void afterAnError_theChannelIsChosenAnew() throws IOException {
    curingProbe.read();
    curing.isUnplugged = true;
    assertThatThrownBy(curingProbe::read)
        .hasMessage("probe curing at 0x44 on I2C bus 1, channel 0: it does not answer");
    curing.isUnplugged = false;

    curingProbe.read();

    assertThat(chip.choices).containsExactly(1, 1);
  }

  @Test
  void choiceThatDidNotTake_givesNoReading_ratherThanTheOtherRooms() throws IOException {
    curingProbe.read();
    chip.isStuck = true;

    assertThatThrownBy(storageProbe::read)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("said 0x01 but channel 3 is 0x08");
    assertThat(storage.commands).isEmpty();
  }

  @Test
  void oneSilentProbe_costsOnlyItsOwnReading() throws IOException {
    storage.isUnplugged = true;

    assertThatThrownBy(storageProbe::read).hasMessageContaining("it does not answer");
    assertThat(curingProbe.read().temperatureMilliC()).isEqualTo(26_090);
  }

  /** The chip and what hangs behind it: 0x44 is whichever sensor its register connects. */
  private final class Chip extends FakeDevice {
    final List<Integer> choices = new ArrayList<>();
    boolean isStuck;
    private int register;

    I2cDevice device(int address) {
      return address == MULTIPLEXER ? this : new Connected();
    }

    @Override
    void take(byte[] bytes) {
      choices.add(bytes[0] & 0xFF);
      register = isStuck ? register : bytes[0] & 0xFF;
    }

    @Override
    byte[] give(int count) {
      return new byte[] {(byte) register};
    }

    /** Address 0x44, whoever answers to it now. */
    private final class Connected extends FakeDevice {
      @Override
      void take(byte[] bytes) throws IOException {
        there().write(bytes);
      }

      @Override
      byte[] give(int count) throws IOException {
        return there().read(count);
      }

      private FakeSht there() throws IOException {
        return switch (register) {
          case 1 -> curing;
          case 8 -> storage;
          default -> throw new IOException("it does not answer");
        };
      }
    }
  }
}
