package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class I2cAddressesTest {
  private final I2cAddresses addresses =
      new I2cAddresses(address -> new FakeSht(ShtFamily.SHT4X, new FakeTime()));

  @Test
  void oneAddress_onSeveralChannels_isFine() throws IOException {
    assertThat(addresses.behind("curing", 0x70, 0, 0x44)).isNotNull();
    assertThat(addresses.behind("storage", 0x70, 1, 0x44)).isNotNull();
  }

  @Test
  void oneAddressTwice_isRefused_withBothNames() throws IOException {
    addresses.onBus("curing", 0x44);

    refused(
        () -> addresses.onBus("storage", 0x44),
        "address of probe storage was 0x44 but it must not be that of probe curing too");
  }

  @Test
  void addressOnTheBus_isNotUsedBehindTheMultiplexer_norTheOtherWayRound() throws IOException {
    addresses.onBus("outdoor", 0x44);
    refused(
        () -> addresses.behind("curing", 0x70, 0, 0x44),
        "address of probe curing was 0x44 but it must not be that of probe outdoor too");

    addresses.behind("storage", 0x70, 0, 0x45);
    refused(
        () -> addresses.onBus("corner", 0x45),
        "address of probe corner was 0x45 but it must not be that of probe storage too");
  }

  @Test
  void sensorOnTheAddressOfTheMultiplexer_isRefused() throws IOException {
    addresses.behind("curing", 0x76, 0, 0x44);

    refused(
        () -> addresses.onBus("outdoor", 0x76),
        "address of probe outdoor was 0x76 but it must not be that of"
            + " the multiplexer of probe curing too");
  }

  @Test
  void secondMultiplexer_isRefused_becauseBothCouldConnectAtOnce() throws IOException {
    addresses.behind("curing", 0x70, 0, 0x44);

    refused(
        () -> addresses.behind("storage", 0x71, 0, 0x44),
        "multiplexer of probe storage was 0x71 but it must be 0x70: one multiplexer a bus");
  }

  @Test
  void numbersOutOfRange_areRefused() {
    refused(
        () -> addresses.onBus("curing", 0x80),
        "address of probe curing was 0x80 but it must be 0x08 to 0x77");
    refused(
        () -> addresses.behind("curing", 0x44, 0, 0x45),
        "address of the multiplexer of probe curing was 0x44 but it must be 0x70 to 0x77");
    refused(
        () -> addresses.behind("curing", 0x70, 8, 0x44),
        "channel of probe curing was 8 but it must be 0 to 7");
  }

  private static void refused(Opening opening, String sentence) {
    assertThatThrownBy(opening::open).isInstanceOf(IOException.class).hasMessage(sentence);
  }

  private interface Opening {
    I2cDevice open() throws IOException;
  }
}
