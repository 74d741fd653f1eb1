package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

class HwmonChannelsTest {
  private static final String CURING = "devices/i2c-1/1-0044/hwmon/hwmon1/";
  private static final String STORAGE = "devices/i2c-1/1-0045/hwmon/hwmon2/";

  @TempDir private Path folder;
  private FakeSysfs sysfs;

  @BeforeEach
  void boardWithTwoSensors() {
    sysfs =
        new FakeSysfs(folder)
            .with("devices/virtual/thermal/hwmon0/name", "cpu_thermal\n")
            .with("devices/virtual/thermal/hwmon0/temp1_input", "48312\n")
            .with(CURING + "name", "sht3x\n")
            .with(CURING + "temp1_input", "27514\n")
            .with(CURING + "humidity1_input", "78126\n")
            .with(STORAGE + "name", "sht3x\n")
            .with(STORAGE + "temp1_input", "12505\n")
            .with(STORAGE + "humidity1_input", "61000\n")
            .linking("class/hwmon/hwmon0", "devices/virtual/thermal/hwmon0")
            .linking("class/hwmon/hwmon1", CURING)
            .linking("class/hwmon/hwmon2", STORAGE);
  }

  private Probe probe(String device) {
    return KernelProbe.hwmon("curing-air", folder, device);
  }

  @Test
  void placeOnTheBus_tellsTwoOfOneKindApart() throws IOException {
    assertThat(probe("1-0044").read()).isEqualTo(new Reading(27_510, 78_130));
    assertThat(probe("1-0045").read()).isEqualTo(new Reading(12_510, 61_000));
  }

  @Test
  void nameOfSeveral_isRefused_withTheirPlaces() {
    assertThatThrownBy(() -> probe("sht3x").read())
        .isInstanceOf(IOException.class)
        .hasMessageContaining("device was 'sht3x' but it must mean one device")
        .hasMessageContaining("1-0044")
        .hasMessageContaining("1-0045");
  }

  @Test
  void nameOfOne_withoutHumidity_isRead() throws IOException {
    assertThat(probe("cpu_thermal").read()).isEqualTo(Reading.ofTemperature(48.31));
  }

  @Test
  void sensorThatGotAnotherNumber_isFoundAgain() throws IOException {
    Probe probe = probe("1-0044");
    probe.read();
    sysfs.without("class/hwmon/hwmon1").linking("class/hwmon/hwmon7", CURING);

    assertThat(probe.read()).isEqualTo(new Reading(27_510, 78_130));
  }

  @Test
  void missingSensor_isNamed_withThosePresent() {
    assertThatThrownBy(() -> probe("sht4x").read())
        .hasMessageStartingWith("probe curing-air (hwmon sht4x): device was 'sht4x'")
        .hasMessageContaining("cpu_thermal");
  }

  @Test
  void faultFlag_andHeater_giveNoReading() {
    sysfs.with(CURING + "heater_enable", "1\n");
    assertThatThrownBy(() -> probe("1-0044").read()).hasMessageContaining("its heater is on");

    sysfs.with(CURING + "temp1_fault", "1\n");
    assertThatThrownBy(() -> probe("1-0044").read())
        .hasMessageContaining("its driver reports a fault");
  }

  // The sht4x driver passes on -6 to 119 %; a value in whole percent would read as 0.041 %.
  @ParameterizedTest
  @CsvSource({"100400, 100000", "118998, 100000", "1000, 1000"})
  void humidityBeyondSaturation_isCutOff(String said, int humidityMilliPct) throws IOException {
    sysfs.with(CURING + "humidity1_input", said);

    assertThat(probe("1-0044").read().humidityMilliPct()).isEqualTo(humidityMilliPct);
  }

  @ParameterizedTest
  @CsvSource({"-6000, -6.000", "0, 0.000", "41.074000000, 0.041", "655350, 655.350"})
  void humidityOfNoRoom_isRefused(String said, String pct) {
    sysfs.with(CURING + "humidity1_input", said);

    assertThatThrownBy(() -> probe("1-0044").read())
        .isInstanceOf(IOException.class)
        .hasMessageContaining("its humidity was " + pct + " % but it must be 1 to 100 %");
  }

  @ParameterizedTest
  @CsvSource({"-200000", "130000"})
  void temperatureOfNoRoom_isRefused(String said) {
    sysfs.with(CURING + "temp1_input", said);

    assertThatThrownBy(() -> probe("1-0044").read())
        .hasMessageContaining("it works from -55 to 125 C only");
  }

  @Test
  void noNumber_isQuoted() {
    sysfs.with(CURING + "temp1_input", "NaN\n");

    assertThatThrownBy(() -> probe("1-0044").read())
        .hasMessageContaining("temp1_input was 'NaN' but it must be a number");
  }
}
