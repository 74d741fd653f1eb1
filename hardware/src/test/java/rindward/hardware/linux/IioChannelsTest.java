package rindward.hardware.linux;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.hardware.Probe;
import rindward.hardware.Reading;

class IioChannelsTest {
  private static final String DEVICE = "bus/iio/devices/iio:device0/";

  @TempDir private Path folder;
  private FakeSysfs sysfs;
  private Probe probe;

  @BeforeEach
  void boardWithOneSensor() {
    sysfs = new FakeSysfs(folder).with(DEVICE + "name", "hdc2010\n");
    probe = KernelProbe.iio("storage-air", folder, "hdc2010");
  }

  @Test
  void inputs_areThousandths() throws IOException {
    sysfs
        .with(DEVICE + "in_temp_input", "12510\n")
        .with(DEVICE + "in_humidityrelative_input", "61204.101562\n");

    assertThat(probe.read()).isEqualTo(new Reading(12_510, 61_200));
  }

  // (raw + offset) x scale, kernel documentation sysfs-bus-iio. 26214 is 0x6666, for which the data
  // sheet's 165 x raw / 65536 - 40 gives 26.00 C, and 32768 is half of 100 %.
  @Test
  void rawValues_areOffsetFirst_thenScaled() throws IOException {
    sysfs
        .with(DEVICE + "in_temp_raw", "26214\n")
        .with(DEVICE + "in_temp_offset", "-15887.515151\n")
        .with(DEVICE + "in_temp_scale", "2.517700195\n")
        .with(DEVICE + "in_humidityrelative_raw", "32768\n")
        .with(DEVICE + "in_humidityrelative_scale", "1.525878906\n");

    assertThat(probe.read()).isEqualTo(new Reading(26_000, 50_000));
  }

  @Test
  void temperatureAlone_isAReading() throws IOException {
    sysfs.with(DEVICE + "in_temp_input", "12510\n");

    assertThat(probe.read()).isEqualTo(Reading.ofTemperature(12.51));
  }

  @Test
  void deviceWithoutTemperature_isRefused() {
    sysfs.with(DEVICE + "in_humidityrelative_input", "61204\n");

    assertThatThrownBy(probe::read)
        .isInstanceOf(IOException.class)
        .hasMessage(
            "probe storage-air (IIO hdc2010): it has no temperature:"
                + " there is no in_temp_input or in_temp_raw");
  }

  @Test
  void driverThatCountsInPercent_isRefused_notGuessed() {
    sysfs
        .with(DEVICE + "in_temp_input", "24100\n")
        .with(DEVICE + "in_humidityrelative_input", "41.074000000\n");

    assertThatThrownBy(probe::read).hasMessageContaining("its humidity was 0.041 %");
  }
}
