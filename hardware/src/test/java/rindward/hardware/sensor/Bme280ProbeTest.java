package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

class Bme280ProbeTest {
  private final FakeTime time = new FakeTime();
  private final FakeBme280 sensor = new FakeBme280(time);
  private final Probe probe = I2cProbe.bme280("outdoor", sensor, time);

  // The codes of Bosch's worked example, 25.08 C, with 20.78 % by the data sheet's formulas.
  @Test
  void read_measuresOnceAndReturnsTheWorkedExample() throws IOException {
    assertThat(probe.read()).isEqualTo(new Reading(25_080, 20_780));
    assertThat(probe.read()).isEqualTo(new Reading(25_080, 20_780));
  }

  @Test
  void bmp280_isNamedAsWhatItIs() {
    sensor.becomeBmp280();

    assertThatThrownBy(probe::read)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("its chip id was 0x58 but a BME280 says 0x60")
        .hasMessageContaining("BMP280, which has no humidity");
  }

  @Test
  void momentWithoutPower_costsOneReading_becauseAnotherPartMayHangThereNow() throws IOException {
    probe.read();
    sensor.losePower();

    assertThatThrownBy(probe::read).hasMessageContaining("it has lost its settings");
    assertThat(probe.read()).isEqualTo(new Reading(25_080, 20_780));
  }

  @Test
  void answersThatDiffer_areRefused_sinceThePartSendsNoChecksum() throws IOException {
    probe.read();
    sensor.hasNoisyWire = true;

    assertThatThrownBy(probe::read).isInstanceOf(IOException.class);
  }

  @Test
  void partThatStaysBusy_isGivenUp() {
    sensor.isStuckBusy = true;

    assertThatThrownBy(probe::read).hasMessageContaining("it stays busy");
  }
}
