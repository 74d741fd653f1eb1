package rindward.controller.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;

/**
 * The learned answer is held against the step response of a first-order system, 1 - e^(-t/T) (a
 * textbook figure, from memory).
 */
class AirTimeConstantTest {
  private static final double TICK = 10;

  @Test
  void beforeAnyRun_itIsThatOfASmallRoom() {
    assertThat(AirTimeConstant.UNKNOWN.seconds()).isEqualTo(60);
  }

  /** What is told ten seconds late is an exact exponential; the rest is rounding. */
  @Seeded(cases = 100)
  void anExactStep_givesItsTimeConstant(Any any) {
    double answerSeconds = any.doubleBetween(25, 200);
    double swingK = any.doubleBetween(0.3, 6);
    AirTimeConstant answer =
        run(AirTimeConstant.UNKNOWN, answerSeconds, swingK, 180, 0, new Random(1));
    assertThat(answer.seconds()).isCloseTo(answerSeconds, within(1e-6 * answerSeconds));
  }

  /** Noise of 0.1 K on 2 K, over some forty runs: three times the error that leaves, 10 s. */
  @Test
  void noisyRuns_areAveraged() {
    Random random = new Random(7);
    AirTimeConstant answer = AirTimeConstant.UNKNOWN;
    for (int i = 0; i < 60; i++) {
      answer = run(answer, 90, 2, 150, 0.1, random);
    }
    assertThat(answer.seconds()).isCloseTo(90, within(30.0));
  }

  @Test
  void shortRuns_teachNothing() {
    AirTimeConstant answer = run(AirTimeConstant.UNKNOWN, 90, 2, 90, 0, new Random(1));
    assertThat(answer.seconds()).isEqualTo(60);
  }

  @Test
  void aRoomThatDoesNotRise_staysWithinBounds() {
    AirTimeConstant answer = run(AirTimeConstant.UNKNOWN, 90, -1, 180, 0, new Random(1));
    assertThat(answer.seconds()).isEqualTo(60);
  }

  private static AirTimeConstant run(
      AirTimeConstant before,
      double answerSeconds,
      double swingK,
      double lasts,
      double noiseK,
      Random random) {
    AirTimeConstant answer = before;
    for (double ran = TICK; ran <= lasts; ran += TICK) {
      double told = Math.max(0, ran - 10);
      double riseK = swingK * -Math.expm1(-told / answerSeconds) + noiseK * random.nextGaussian();
      answer = answer.next(ran, TICK, riseK);
    }
    return answer;
  }
}
