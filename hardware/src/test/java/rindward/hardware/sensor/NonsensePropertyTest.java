package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import rindward.hardware.Any;
import rindward.hardware.Reading;
import rindward.hardware.Seeded;

/** Whatever a wire delivers is a reading that the part can have made, or one sentence. */
class NonsensePropertyTest {
  @Seeded
  void anyTwoWords_areAReadingOfTheFamily_orRefused(Any any) {
    byte[] temperature = any.bytes(2);
    byte[] humidity = any.bytes(2);
    byte[] frame = {
      temperature[0],
      temperature[1],
      (byte) Crc8.sensirion(temperature, 0, 2),
      humidity[0],
      humidity[1],
      (byte) Crc8.sensirion(humidity, 0, 2)
    };
    for (ShtFamily family : ShtFamily.values()) {
      isBelievableOrRefused(() -> family.reading(SensirionFrame.parse(frame)), -40_000, 125_000);
    }
  }

  @Seeded
  void anyTrimValuesAndCodes_areAReadingOfABme280_orRefused(Any any) {
    byte[] first = any.bytes(Bme280Calibration.FIRST_BYTES);
    byte[] second = any.bytes(Bme280Calibration.SECOND_BYTES);
    byte[] burst = any.bytes(Bme280Sample.BYTES);
    isBelievableOrRefused(
        () -> Bme280Sample.parse(burst).reading(Bme280Calibration.parse(first, second)),
        -40_000,
        85_000);
  }

  @Seeded
  void anyTextOfAProbe_isRefusedInASentence_unlessItIsOne(Any any) {
    String text =
        String.join(
            "", any.list(0, 90, () -> any.of("0", "5", "f", " ", ":", "\n", "t", "=", "Y", "-")));
    isBelievableOrRefused(
        () -> Reading.ofTemperature(W1SlaveText.parse(text).temperatureMilliC() / 1000.0),
        -55_000,
        125_000);
  }

  private static void isBelievableOrRefused(Parse parse, int lowestMilliC, int highestMilliC) {
    try {
      Reading reading = parse.parse();
      assertThat(reading.temperatureMilliC()).isBetween(lowestMilliC, highestMilliC);
      if (reading.hasHumidity()) {
        assertThat(reading.humidityMilliPct()).isBetween(0, 100_000);
      }
    } catch (IOException e) {
      assertThat(e.getMessage()).contains(" ").doesNotContain("\n");
    }
  }

  private interface Parse {
    Reading parse() throws IOException;
  }
}
