package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.Reading;

class ShtFamilyTest {
  // Computed with the formulas of the data sheets SHT3x-DIS v5 and SHT4x v6, to four decimals.
  @ParameterizedTest
  @CsvSource({
    "0000 81 0000 81, -45.0000, 0.0000, 0.0000",
    "6666 93 8000 A2, 25.0000, 50.0008, 56.5010",
    "6666 93 CCCC A5, 25.0000, 80.0000, 94.0000",
    "66A4 B6 CCCD 94, 25.1656, 80.0015, 94.0019",
    "6800 E3 B333 AB, 26.0948, 70.0008, 81.5010",
    "FFFF AC FFFF AC, 130.0000, 100.0000, 100.0000"
  })
  void conversion_agreesWithTheDataSheets(
      String frame, double temperatureC, double sht3xPct, double sht4xPct) throws IOException {
    SensirionFrame parsed = SensirionFrame.parse(Hex.bytes(frame));

    // Half of the last printed digit.
    for (ShtFamily family : ShtFamily.values()) {
      assertThat(family.temperatureC(parsed.temperatureTicks()))
          .isCloseTo(temperatureC, within(0.00005));
    }
    assertThat(ShtFamily.SHT3X.humidityPct(parsed.humidityTicks()))
        .isCloseTo(sht3xPct, within(0.00005));
    assertThat(ShtFamily.SHT4X.humidityPct(parsed.humidityTicks()))
        .isCloseTo(sht4xPct, within(0.00005));
  }

  @Test
  void reading_isRoundedToHundredths() throws IOException {
    SensirionFrame frame = SensirionFrame.parse(Hex.bytes("66A4 B6 CCCD 94"));

    assertThat(ShtFamily.SHT3X.reading(frame)).isEqualTo(new Reading(25_170, 80_000));
  }

  @Test
  void brokenChecksum_isRefusedWithTheWordItStandsBehind() {
    assertThatThrownBy(() -> SensirionFrame.parse(Hex.bytes("6666 92 8000 A2")))
        .isInstanceOf(IOException.class)
        .hasMessage("the checksum of its temperature was 0x92 but it must be 0x93; check the wire");
    assertThatThrownBy(() -> SensirionFrame.parse(Hex.bytes("6666 93 8000 A3")))
        .hasMessageContaining("the checksum of its humidity was 0xA3");
  }

  @Test
  void shortAnswer_isRefused() {
    assertThatThrownBy(() -> SensirionFrame.parse(Hex.bytes("6666 93")))
        .hasMessage("its answer had 3 bytes but it must have 6");
  }

  @ParameterizedTest
  @CsvSource({"0000 81 8000 A2, -45.00", "FFFF AC 8000 A2, 130.00"})
  void endOfTheScale_isNotATemperature(String frame, String said) throws IOException {
    SensirionFrame parsed = SensirionFrame.parse(Hex.bytes(frame));

    assertThatThrownBy(() -> ShtFamily.SHT4X.reading(parsed))
        .isInstanceOf(IOException.class)
        .hasMessage("it said " + said + " C but it works from -40 to 125 C only");
  }
}
