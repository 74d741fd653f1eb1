package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

class OneWireProbeTest {
  private static final String SERIAL = "28-0316a2791bff";
  private static final String FOLDER = "bus/w1/devices/" + SERIAL + "/";
  private static final String GOOD =
      """
      51 01 4b 46 7f ff 0c 10 ab : crc=ab YES
      51 01 4b 46 7f ff 0c 10 ab t=21062
      """;

  @TempDir private Path folder;
  private final AtomicLong nanos = new AtomicLong();
  private long readNanos = 750_000_000;
  private FakeSysfs sysfs;
  private Probe probe;

  @BeforeEach
  void open() throws IOException {
    sysfs = new FakeSysfs(folder);
    probe = new OneWireProbe("pulp", folder, SERIAL, () -> nanos.getAndAdd(readNanos));
  }

  @Test
  void w1Slave_isRead_roundedToHundredths_withoutHumidity() throws IOException {
    sysfs.with(FOLDER + "w1_slave", GOOD);

    assertThat(probe.read()).isEqualTo(Reading.ofTemperature(21.06));
    assertThat(probe.read().hasHumidity()).isFalse();
  }

  @Test
  void temperatureFile_isRead_whereTheKernelHasNoOther() throws IOException {
    sysfs.with(FOLDER + "temperature", "-25062\n");

    assertThat(probe.read()).isEqualTo(Reading.ofTemperature(-25.06));
  }

  @Test
  void crcNo_isRefused_thoughTheOldValueStandsBelow() {
    sysfs.with(
        FOLDER + "w1_slave",
        """
        ff ff ff ff ff ff ff ff ff : crc=c9 NO
        73 01 4b 46 7f ff 0d 10 41 t=23187
        """);

    refused("the checksum of its answer was wrong");
  }

  @Test
  void powerOnValue_isRefused_andTheNextReadingIsFine() throws IOException {
    sysfs.with(
        FOLDER + "w1_slave",
        """
        50 05 4b 46 7f ff 0c 10 1c : crc=1c YES
        50 05 4b 46 7f ff 0c 10 1c t=85000
        """);
    refused("it says when power came back before it measured");

    sysfs.with(FOLDER + "w1_slave", GOOD);
    assertThat(probe.read().temperatureMilliC()).isEqualTo(21_060);
  }

  @Test
  void weakPowerValue_isRefused() {
    sysfs.with(
        FOLDER + "w1_slave",
        """
        ff 07 4b 46 7f ff 0c 10 a6 : crc=a6 YES
        ff 07 4b 46 7f ff 0c 10 a6 t=127937
        """);

    refused("it said 127.94 C but it works from -55 to 125 C only");
  }

  @Test
  void busHeldLow_isRefused_fromEitherFile() {
    sysfs.with(
        FOLDER + "w1_slave",
        """
        00 00 00 00 00 00 00 00 00 : crc=00 YES
        00 00 00 00 00 00 00 00 00 t=0
        """);
    refused("its data wire is held low");

    sysfs.without(FOLDER + "w1_slave").with(FOLDER + "temperature", "0\n");
    refused("as it does when its data wire is held low");
  }

  @Test
  void unpluggedProbe_isMissed_andThoseThatArePresentAreNamed() {
    sysfs.with("bus/w1/devices/28-00000b1e5a42/w1_slave", GOOD);

    refused("it is not on the bus; the bus has 28-00000b1e5a42");
  }

  @Test
  void boardWithoutA1WireBus_saysSo() {
    refused("the bus has no 1-Wire driver loaded");
  }

  @Test
  void probeThatComesBack_isReadAgain() throws IOException {
    refused("it is not on the bus");

    sysfs.with(FOLDER + "w1_slave", GOOD);
    assertThat(probe.read().temperatureMilliC()).isEqualTo(21_060);
  }

  @Test
  void slowRead_isRefused_becauseItsMomentIsUnknown() {
    sysfs.with(FOLDER + "w1_slave", GOOD);
    readNanos = 6_200_000_000L;

    refused("it took 6.2 s but must take at most 5 s");
  }

  @Test
  void emptyFile_asDuringAConversionOfTheWholeBus_isRefused() {
    sysfs.with(FOLDER + "temperature", "");
    refused("temperature was '' but it must be a number");

    sysfs.with(FOLDER + "w1_slave", "");
    refused("it gave no text");
  }

  @ParameterizedTest
  @ValueSource(strings = {"10-000802b4e7d1", "28-0316A2791BFF", "28-0316", "../28-0316a2791bff"})
  void serialOfAnotherPart_isRefusedAtOnce(String serial) {
    assertThatThrownBy(() -> new OneWireProbe("pulp", folder, serial, () -> 0))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("serial of probe pulp was '" + serial + "' but it must be");
  }

  private void refused(String because) {
    assertThatThrownBy(probe::read)
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("probe pulp (1-Wire " + SERIAL + "): ")
        .hasMessageContaining(because);
  }
}
