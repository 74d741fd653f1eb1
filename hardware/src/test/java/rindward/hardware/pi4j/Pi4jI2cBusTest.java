package rindward.hardware.pi4j;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.mockito.Mockito.mock;

import com.pi4j.library.linuxfs.LinuxFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.sensor.Hex;
import rindward.hardware.sensor.I2cDevice;
import rindward.hardware.sensor.I2cProbe;

/** An I2C bus on Pi4J's mock, with scripted answers. */
class Pi4jI2cBusTest {
  private final ScriptedI2c script = new ScriptedI2c();
  private final Pi4jI2cBus bus = new Pi4jI2cBus(1, script::context);

  @Test
  void probe_speaksThroughTheBus() throws IOException {
    script.answers.add(Hex.bytes("6666 93 CCCC A5"));
    Probe probe = I2cProbe.sht4x("curing-air", bus.device(0x44), millis -> {});

    assertThat(probe.read()).isEqualTo(new Reading(25_000, 94_000));
    assertThat(script.written).containsExactly("68: 94", "68: fd");
  }

  @Test
  void bus_isOpenedAtTheFirstTransfer_once_forAllItsDevices() throws IOException {
    I2cDevice first = bus.device(0x44);
    I2cDevice second = bus.device(0x45);
    assertThat(script.opened).isZero();

    first.write((byte) 1);
    second.write((byte) 2);
    bus.device(0x44).write((byte) 3);

    assertThat(script.opened).isEqualTo(1);
    assertThat(script.written).containsExactly("68: 01", "69: 02", "68: 03");
  }

  @Test
  void silentDevice_isReported_withTheInnermostCause_andTheBusStaysOpen() throws IOException {
    I2cDevice device = bus.device(0x44);
    device.write((byte) 1);
    script.refusal = new IOException("Remote I/O error");

    assertThatThrownBy(() -> device.read(6))
        .isInstanceOf(IOException.class)
        .hasMessage("it does not answer (Remote I/O error)");
    assertThat(script.closed).isZero();
  }

  @Test
  void shortAnswer_isReported() {
    script.answers.add(Hex.bytes("6666"));

    assertThatThrownBy(() -> bus.device(0x44).read(6))
        .isInstanceOf(IOException.class)
        .hasMessage("it gave 2 of 6 bytes");
  }

  @Test
  void reopen_letsGo_andTheNextTransferOpensAnew() throws IOException {
    I2cDevice device = bus.device(0x44);
    device.write((byte) 1);

    device.reopen();
    assertThat(script.closed).isEqualTo(1);

    device.write((byte) 2);
    assertThat(script.opened).isEqualTo(2);
    assertThat(script.written).containsExactly("68: 01", "68: 02");
  }

  // Otherwise the next transfer would reach the device chosen before. The exception asks a native
  // library for its text when it is made, so it is a mock.
  @Test
  void addressRefusedByTheKernel_opensTheBusAnewBeforeAnythingElse() throws IOException {
    bus.device(0x44).write((byte) 1);
    script.refusal = mock(LinuxFile.LinuxFileException.class);

    assertThatThrownBy(() -> bus.device(0x45).write((byte) 2))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("a kernel driver may read this sensor");
    assertThat(script.closed).isEqualTo(1);
  }

  @Test
  void closedTwice_isFine() throws IOException {
    bus.device(0x44).write((byte) 1);

    bus.close();
    bus.close();

    assertThat(script.closed).isEqualTo(1);
  }

  @Test
  void missingBus_isReported_withTheRemedy() {
    assumeFalse(Files.exists(Path.of("/dev/i2c-97")), "a board with very many buses");

    assertThatThrownBy(() -> Pi4jI2cBus.of(97).device(0x44).write((byte) 1))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("I2C bus 97 cannot be opened (")
        .hasMessageEndingWith("); it must be enabled, and the user in the group i2c");
  }
}
