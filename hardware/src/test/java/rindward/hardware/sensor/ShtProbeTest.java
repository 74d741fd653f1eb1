package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InterruptedIOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

class ShtProbeTest {
  private final FakeTime time = new FakeTime();

  private Probe probe(FakeSht sensor, ShtFamily family) {
    return family == ShtFamily.SHT3X
        ? I2cProbe.sht3x("curing-air", sensor, time)
        : I2cProbe.sht4x("curing-air", sensor, time);
  }

  @ParameterizedTest
  @EnumSource
  void read_waitsForTheConversion_andReturnsWhatTheFrameSays(ShtFamily family) throws IOException {
    FakeSht sensor = new FakeSht(family, time);

    Reading reading = probe(sensor, family).read();

    assertThat(reading.temperatureMilliC()).isEqualTo(25_000);
    assertThat(reading.humidityMilliPct()).isEqualTo(family == ShtFamily.SHT3X ? 50_000 : 56_500);
  }

  @Test
  void firstRead_resetsAndSwitchesTheHeaterOff_laterOnesOnlyMeasure() throws IOException {
    FakeSht sensor = new FakeSht(ShtFamily.SHT3X, time);
    sensor.hasHeaterOn = true;
    Probe probe = probe(sensor, ShtFamily.SHT3X);

    probe.read();
    probe.read();

    assertThat(sensor.hasHeaterOn).isFalse();
    assertThat(sensor.commands).containsExactly("30A2", "3066", "F32D", "2400", "2400");
  }

  @Test
  void heaterThatStaysOn_givesNoReading() {
    FakeSht sensor = new FakeSht(ShtFamily.SHT3X, time);
    sensor.hasHeaterOn = true;
    sensor.isHeaterStuck = true;

    assertThatThrownBy(() -> probe(sensor, ShtFamily.SHT3X).read())
        .isInstanceOf(IOException.class)
        .hasMessage("probe curing-air at 0x44 on I2C bus 1: its heater is on and does not go off");
  }

  @ParameterizedTest
  @EnumSource
  void brokenChecksum_costsOneReading_andTheNextBeginsWithAReset(ShtFamily family)
      throws IOException {
    FakeSht sensor = new FakeSht(family, time);
    Probe probe = probe(sensor, family);
    probe.read();
    sensor.frame = "6666 93 8000 A3";

    assertThatThrownBy(probe::read)
        .hasMessageStartingWith("probe curing-air at 0x44 on I2C bus 1: the checksum");

    sensor.frame = "6800 E3 B333 AB";
    sensor.commands.clear();
    assertThat(probe.read().temperatureMilliC()).isEqualTo(26_090);
    assertThat(sensor.commands.get(0)).isEqualTo(family == ShtFamily.SHT3X ? "30A2" : "94");
  }

  @Test
  void silence_opensTheBusAgainEveryThirdTime_andEndsWhenTheProbeIsBack() throws IOException {
    FakeSht sensor = new FakeSht(ShtFamily.SHT4X, time);
    Probe probe = probe(sensor, ShtFamily.SHT4X);
    sensor.isUnplugged = true;

    for (int i = 1; i <= 7; i++) {
      assertThatThrownBy(probe::read)
          .hasMessage("probe curing-air at 0x44 on I2C bus 1: it does not answer");
      assertThat(sensor.reopened).isEqualTo(i / I2cProbe.FAILURES_TO_REOPEN);
    }

    sensor.isUnplugged = false;
    assertThat(probe.read().temperatureMilliC()).isEqualTo(25_000);
  }

  @Test
  void interruptedWait_isPassedOn_andTheNextReadStartsAfresh() throws IOException {
    FakeSht sensor = new FakeSht(ShtFamily.SHT4X, time);
    boolean[] isInterrupted = {true};
    Probe probe =
        I2cProbe.sht4x(
            "curing-air",
            sensor,
            millis -> {
              if (isInterrupted[0]) {
                throw new InterruptedIOException("told to stop");
              }
              time.millis(millis);
            });

    assertThatThrownBy(probe::read).isInstanceOf(InterruptedIOException.class);

    isInterrupted[0] = false;
    assertThat(probe.read().temperatureMilliC()).isEqualTo(25_000);
  }
}
