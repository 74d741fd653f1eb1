package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rindward.controller.alarm.RoomFacts;
import rindward.hardware.Thousandths;

/**
 * The forecast against rooms whose answer is known in closed form: R1 and R2, air alone, C 500
 * kJ/K, H 50 W/K, heater 1000 W, outdoors 5 C; R5, air 60 kJ/K and 500 kg of fruit of 3.9 kJ/(kg K)
 * at 250 W/K, H 50 W/K, heater 1500 W, outdoors 5 C. Their check values were computed outside this
 * project from the heat balance C dT/dt = Q - H (T - To), double precision.
 */
class AnalyticForecastTest {
  private static final int STEP_SECONDS = 10;
  private static final int DAY_SECONDS = 86_400;

  /** A room that a thermostat can hold. */
  private interface Model {
    double airC();

    void step(double watts);
  }

  private static final class OneNode implements Model {
    private double airC;

    OneNode(double startC) {
      airC = startC;
    }

    @Override
    public double airC() {
      return airC;
    }

    @Override
    public void step(double watts) {
      double end = 5 + watts / 50;
      airC = end + (airC - end) * Math.exp(-STEP_SECONDS / 10_000.0);
    }
  }

  private static final class TwoNodes implements Model {
    private double airC;
    private double fruitC;

    TwoNodes(double startC) {
      airC = startC;
      fruitC = startC;
    }

    @Override
    public double airC() {
      return airC;
    }

    /** Small explicit steps: at 0.1 s they keep all printed digits of the check values but two. */
    @Override
    public void step(double watts) {
      for (int i = 0; i < STEP_SECONDS * 10; i++) {
        double exchange = 250 * (fruitC - airC);
        airC += 0.1 * (watts + exchange - 50 * (airC - 5)) / 60e3;
        fruitC -= 0.1 * exchange / 1950e3;
      }
    }
  }

  /** What the watch said first after the heater died, and what came. */
  private record Outcome(double spokenMinutes, int saidMinutes, double crossedMinutes) {}

  private static Outcome dieAfter(
      int days, Model room, double setC, double watts, double thresholdC) {
    RoomDetectors watch = new RoomDetectors();
    boolean isHeating = false;
    double spoken = -1;
    int said = -1;
    for (int t = 0; ; t += STEP_SECONDS) {
      isHeating = room.airC() < setC + (isHeating ? 0.5 : -0.5);
      boolean isDead = t >= days * DAY_SECONDS;
      watch.tick(
          t,
          WatchedAir.of(Thousandths.of(room.airC()), Thousandths.NONE),
          WatchedAir.of(5_000, Thousandths.NONE),
          isHeating,
          true,
          false,
          false,
          Thousandths.of(thresholdC));
      double minutes = (t - days * DAY_SECONDS) / 60.0;
      if (!isDead) {
        assertThat(watch.minutesToCold()).isEqualTo(RoomFacts.NOT_FORECAST);
      } else if (spoken < 0 && watch.minutesToCold() != RoomFacts.NOT_FORECAST) {
        spoken = minutes;
        said = watch.minutesToCold();
      }
      if (room.airC() < thresholdC) {
        return new Outcome(spoken, said, minutes);
      }
      room.step(isHeating && !isDead ? watts : 0);
    }
  }

  @Test
  void oursAreTheRoomsOfTheCheckValues() {
    Model one = new OneNode(10);
    Model two = new TwoNodes(10);
    for (int t = 0; t < 3600; t += STEP_SECONDS) {
      one.step(1000);
      two.step(1500);
    }
    assertThat(one.airC()).isCloseTo(14.534855, within(1e-6));
    assertThat(two.airC()).isCloseTo(15.516970, within(1e-4));
  }

  @Test
  void oneNode_heaterDies_crossingIsSaidToAFewMinutes() {
    Outcome outcome = dieAfter(1, new OneNode(19), 19, 1000, 15);
    double end = outcome.spokenMinutes() + outcome.saidMinutes();
    // Ten minutes until the heater counts as fully used and five to hold, then a tenth of the rest.
    assertThat(outcome.spokenMinutes()).isLessThan(35);
    assertThat(end).isCloseTo(outcome.crossedMinutes(), within(outcome.crossedMinutes() * 0.1));
  }

  /**
   * The slow mean follows in 90 minutes and this room's fruit in 13 hours, and weather that never
   * changes teaches little: the first word is half as long again as the time that is left.
   */
  @Test
  void airAndFruit_heaterDies_isSaidAnHourAndAHalfAhead_withinTwoThirdsOfTheTimeLeft() {
    Outcome outcome = dieAfter(2, new TwoNodes(12), 12, 1500, 10);
    double left = outcome.crossedMinutes() - outcome.spokenMinutes();
    assertThat(outcome.spokenMinutes()).isBetween(0.0, 35.0);
    assertThat(left).isGreaterThan(90);
    assertThat(outcome.saidMinutes() / left).isBetween(0.6, 1.67);
  }
}
