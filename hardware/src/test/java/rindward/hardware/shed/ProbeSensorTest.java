package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProbeSensorTest {
  private static final ProbeErrors LAG_ONLY = new ProbeErrors(60, 0, 0, 0, 0, 0, 0, 0);

  private static ProbeSensor at(ProbeErrors errors, double temperatureC, double humidityPct) {
    ProbeSensor sensor = new ProbeSensor(errors, 1);
    sensor.follow(temperatureC, humidityPct, 0);
    return sensor;
  }

  @Test
  void oneTimeConstantAfterAStep_showsTheKnownShareWhateverTheTick() {
    for (double tick : new double[] {1, 10, 60}) {
      ProbeSensor sensor = at(LAG_ONLY, 10, 50);
      for (int i = 0; i < 60 / tick; i++) {
        sensor.follow(20, 70, tick);
      }
      // 1 - 1/e = 0.632121
      assertThat(sensor.senseC(0)).isCloseTo(16.32121, offset(1e-5));
      assertThat(sensor.sensePct(0)).isCloseTo(62.64241, offset(1e-5));
    }
  }

  @Test
  void quantisation_roundsToTheNearestStep() {
    ProbeSensor sensor = at(new ProbeErrors(0, 0, 0, 0, 0, 0, 0.0625, 0.5), 12.34, 61.3);
    assertThat(sensor.senseC(0)).isEqualTo(12.3125);
    assertThat(sensor.sensePct(0)).isEqualTo(61.5);
  }

  @Test
  void biasAndDrift_addUp() {
    ProbeSensor sensor = at(new ProbeErrors(0, 0.2, -2, 0.5, 0, 0, 0, 0), 12, 60);
    for (int day = 0; day < 365; day++) {
      sensor.follow(12, 60, 86400);
    }
    assertThat(sensor.senseC(0)).isCloseTo(12.2, offset(1e-9));
    assertThat(sensor.sensePct(0)).isCloseTo(60 - 2 + 0.5, offset(1e-3));
  }

  @Test
  void noise_hasTheStatedSpreadAndRepeatsWithTheSeed() {
    ProbeErrors noisy = new ProbeErrors(0, 0, 0, 0, 0.1, 0, 0, 0);
    ProbeSensor sensor = at(noisy, 12, 60);
    ProbeSensor again = at(noisy, 12, 60);
    double[] readings = IntStream.range(0, 4000).mapToDouble(i -> sensor.senseC(0)).toArray();
    double meanC = DoubleStream.of(readings).average().orElseThrow();
    double varianceC =
        DoubleStream.of(readings).map(c -> (c - meanC) * (c - meanC)).average().orElseThrow();
    // Standard error of a mean of 4000 is 0.0016 K, of a spread 1.1 %; four of each.
    assertThat(meanC).isCloseTo(12, offset(0.0064));
    assertThat(Math.sqrt(varianceC)).isCloseTo(0.1, offset(0.0045));
    assertThat(again.senseC(0)).isEqualTo(readings[0]);
  }

  @Test
  void humidity_staysWithinNothingAndAll() {
    ProbeSensor sensor = at(new ProbeErrors(0, 0, 5, 0, 0, 0, 0, 0), 12, 98);
    assertThat(sensor.sensePct(0)).isEqualTo(100);
  }
}
