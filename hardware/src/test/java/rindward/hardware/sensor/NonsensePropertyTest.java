package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import rindward.hardware.Reading;

/** Whatever a wire delivers is a reading that the part can have made, or one sentence. */
class NonsensePropertyTest {
  @Property
  void anyTwoWords_areAReadingOfTheFamily_orRefused(
      @ForAll @Size(2) byte[] temperature, @ForAll @Size(2) byte[] humidity) {
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

  @Property
  void anyTrimValuesAndCodes_areAReadingOfABme280_orRefused(
      @ForAll @Size(Bme280Calibration.FIRST_BYTES) byte[] first,
      @ForAll @Size(Bme280Calibration.SECOND_BYTES) byte[] second,
      @ForAll @Size(Bme280Sample.BYTES) byte[] burst) {
    isBelievableOrRefused(
        () -> Bme280Sample.parse(burst).reading(Bme280Calibration.parse(first, second)),
        -40_000,
        85_000);
  }

  @Property
  void anyTextOfAProbe_isRefusedInASentence_unlessItIsOne(
      @ForAll @StringLength(max = 90) @Chars({'0', '5', 'f', ' ', ':', '\n', 't', '=', 'Y', '-'})
          String text) {
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
