package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.Reading;

class Bme280CalibrationTest {
  // T1 27504, T2 26435, T3 -1000 and adc 519888 give 25.08 C: the worked example of Bosch's data
  // sheet BST-BMP280-DS001, section 3.12; both parts share the arithmetic of temperature.
  private static final int EXAMPLE_ADC_T = 519_888;

  private static Bme280Calibration with(int h2, int h4, int h5) {
    return new Bme280Calibration(27_504, 26_435, -1000, 75, h2, 0, h4, h5, 30);
  }

  @Test
  void temperature_isThatOfTheWorkedExample() {
    assertThat(with(362, 333, 0).temperatureC(EXAMPLE_ADC_T)).isCloseTo(25.08, within(0.005));
    assertThat(with(362, 333, 0).temperatureC(EXAMPLE_ADC_T))
        .as("the same in double precision, to six decimals")
        .isCloseTo(25.082478, within(0.0000005));
  }

  // Bosch prints no example of humidity. These were computed by another program with the double
  // form of the data sheet's formulas, and agree with its integer form to 0.005 %.
  @ParameterizedTest
  @CsvSource({
    "20000, 362, 333, 0, 0.000000",
    "25000, 362, 333, 0, 20.779310",
    "28000, 362, 333, 0, 37.590559",
    "30000, 362, 333, 0, 48.752374",
    "32768, 362, 333, 0, 64.140033",
    "40000, 362, 333, 0, 100.000000",
    "20000, 353, 340, 0, 0.000000",
    "25000, 353, 340, 0, 17.808914",
    "28000, 353, 340, 0, 34.217328",
    "30000, 353, 340, 0, 45.112830",
    "32768, 353, 340, 0, 60.134872",
    "40000, 353, 340, 0, 99.069050",
    "20000, 362, 313, 50, 0.000000",
    "25000, 362, 313, 50, 27.078930",
    "28000, 362, 313, 50, 43.859411",
    "30000, 362, 313, 50, 55.000715",
    "32768, 362, 313, 50, 70.359986",
    "40000, 362, 313, 50, 100.000000"
  })
  void humidity_agreesWithTheFormulasOfTheDataSheet(
      int adcH, int h2, int h4, int h5, double humidityPct) {
    // The other program fixed the fine temperature at the data sheet's integer 128422.
    assertThat(with(h2, h4, h5).humidityPct(adcH, EXAMPLE_ADC_T))
        .isCloseTo(humidityPct, within(0.00001));
  }

  @Test
  void blocks_areReadByteByByte_andNibbleByNibble() throws IOException {
    byte[] first = new byte[Bme280Calibration.FIRST_BYTES];
    System.arraycopy(Hex.bytes("706B 4367 18FC"), 0, first, 0, 6);
    first[25] = 75;

    assertThat(Bme280Calibration.parse(first, Hex.bytes("6A01 00 14 0D 00 1E")))
        .isEqualTo(new Bme280Calibration(27_504, 26_435, -1000, 75, 362, 0, 333, 0, 30));
    assertThat(Bme280Calibration.parse(first, Hex.bytes("6A01 00 EA 23 FE 1E")))
        .as("signs reach from the high bytes into the nibbles")
        .isEqualTo(new Bme280Calibration(27_504, 26_435, -1000, 75, 362, 0, -349, -30, 30));
  }

  @ParameterizedTest
  @CsvSource({"00", "FF"})
  void blankCalibration_isRefused(String everyByte) {
    byte[] first = Hex.bytes(everyByte.repeat(Bme280Calibration.FIRST_BYTES));
    byte[] second = Hex.bytes(everyByte.repeat(Bme280Calibration.SECOND_BYTES));

    assertThatThrownBy(() -> Bme280Calibration.parse(first, second))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("must not be blank");
  }

  @Test
  void burst_holdsPressureTemperatureHumidityInThisOrder() throws IOException {
    Bme280Sample sample = Bme280Sample.parse(Hex.bytes("655AC0 7EED00 61A8"));

    assertThat(sample).isEqualTo(new Bme280Sample(EXAMPLE_ADC_T, 25_000));
    assertThat(sample.reading(with(362, 333, 0))).isEqualTo(new Reading(25_080, 20_780));
  }

  @ParameterizedTest
  @CsvSource({"800000 800000 8000", "800000 7EED00 8000", "800000 800000 61A8"})
  void channelThatWasOff_isRefused_thoughItWouldDecodeToABelievableValue(String burst) {
    Bme280Sample sample = Bme280Sample.parse(Hex.bytes(burst));

    assertThatThrownBy(() -> sample.reading(with(362, 333, 0)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("it measured nothing");
  }

  @ParameterizedTest
  @CsvSource({"000000 000000 0000", "FFFFFF FFFFFF FFFF"})
  void busHeldLowOrHigh_isRefused(String burst) {
    Bme280Sample sample = Bme280Sample.parse(Hex.bytes(burst));

    assertThatThrownBy(() -> sample.reading(with(362, 333, 0)))
        .hasMessageContaining("all its bits were the same");
  }
}
