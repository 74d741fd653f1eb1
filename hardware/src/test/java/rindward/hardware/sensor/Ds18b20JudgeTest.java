package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Ds18b20JudgeTest {
  private final Ds18b20Judge judge = new Ds18b20Judge();

  @Test
  void powerOnValue_isRefused_atStartAndAfterAnOrdinaryReading() throws IOException {
    refused(85_000, true, "85.000 C");

    judge.believe(21_062, true);
    refused(85_000, true, "85.000 C");
  }

  @Test
  void eightyFive_isBelieved_whenTheReadingBeforeLayCloseBy() throws IOException {
    judge.believe(84_500, true);

    assertThat(judge.believe(85_000, true)).isEqualTo(85_000);
  }

  @Test
  void zeroOutOfTheBlue_isRefused_whenItsBytesWereNotSeen() throws IOException {
    refused(0, false, "held low");

    judge.believe(12_000, false);
    refused(0, false, "held low");
  }

  @Test
  void zeroOnTheWayDown_isBelieved() throws IOException {
    judge.believe(187, false);

    assertThat(judge.believe(0, false)).isZero();
    assertThat(judge.believe(-62, false)).isEqualTo(-62);
  }

  @Test
  void zeroWithItsBytesSeen_isBelievedAtOnce() throws IOException {
    assertThat(judge.believe(0, true)).isZero();
  }

  // 127.937 C: insufficient power (kernel documentation, w1_therm); -55..125 C: data sheet DS18B20.
  @ParameterizedTest
  @ValueSource(ints = {127_937, 125_001, -55_001})
  void outsideTheRangeOfThePart_isRefused(int temperatureMilliC) {
    refused(temperatureMilliC, true, "works from -55 to 125 C only");
  }

  private void refused(int temperatureMilliC, boolean showsScratchpad, String because) {
    assertThatThrownBy(() -> judge.believe(temperatureMilliC, showsScratchpad))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(because);
  }
}
