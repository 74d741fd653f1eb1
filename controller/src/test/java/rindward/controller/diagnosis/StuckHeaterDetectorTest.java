package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A heater welded on while a room cures at 27 to 29 C: the air rises to so many kelvin more, as it
 * does in a room, most of it in the first minutes. Told within 15 minutes of the command, whatever
 * is known of outdoors.
 */
class StuckHeaterDetectorTest {
  private static final double UPPER_C = 29;
  private static final double LIFT_K = 2;
  private static final double RISES_WITHIN_SECONDS = 600;
  private static final long BOUND_SECONDS = 900;
  private static final double UNKNOWN = Double.NaN;

  private final StuckHeaterDetector stuck = new StuckHeaterDetector();
  private long now;
  private boolean isFresh;

  @ParameterizedTest
  @CsvSource({"0, 8", "20, 8", "26, 8", "28, 8", "NaN, 8", "0, 4", "20, 4", "28, 4", "NaN, 4"})
  void weldedHeater_isSeenWithin15Minutes_fromTheCuringRange(double outdoorC, double riseK) {
    heats();

    assertThat(secondsUntilSeen(outdoorC, riseK, false)).isLessThanOrEqualTo(BOUND_SECONDS);
  }

  /** In 0.1.0 every pulse of the exhaust made it start anew. */
  @Test
  void weldedHeater_isSeenWhileCoolerAirIsLetIn() {
    heats();

    assertThat(secondsUntilSeen(20, 4, true)).isLessThanOrEqualTo(BOUND_SECONDS);
  }

  @ParameterizedTest
  @CsvSource({"26", "28", "NaN"})
  void heaterThatStops_isNotSeen(double outdoorC) {
    for (int run = 0; run < 20; run++) {
      heats();
      double air = 28;
      for (int i = 0; i < 180; i++) {
        now += 10;
        air -= (air - 26.5) * 10 / 300;
        tick(air, outdoorC, false, false);
      }
      assertThat(stuck.isStuck()).isFalse();
    }
  }

  /** Outdoor air warmer than the room holds it up and warms it, through a door or a fan. */
  @Test
  void warmDayThroughAnOpenDoor_isNoHeater() {
    heats();
    double air = 28;
    for (int i = 0; i < 360; i++) {
      now += 10;
      air += (33 - air) * 10 / 600;
      tick(air, 33, false, false);
    }
    assertThat(stuck.isStuck()).isFalse();
  }

  /** A hot afternoon without an outdoor probe: 3 K an hour, far above the range. */
  @Test
  void hotAfternoon_isNoHeater_thoughNobodyKnowsOutdoors() {
    double air = 26;
    for (int i = 0; i < 4 * 360; i++) {
      now += 10;
      air += 3.0 / 360;
      tick(air, UNKNOWN, false, false);
    }
    assertThat(stuck.isStuck()).isFalse();
  }

  /** Harvest days bring fruit every day, and are warm. */
  @Test
  void weldedHeater_isSeenOnAHarvestDay_andWarmFruitIsNoHeater() {
    isFresh = true;
    heats();
    assertThat(secondsUntilSeen(20, 2.5, false)).isGreaterThan(3 * 3600);
    heats();
    assertThat(secondsUntilSeen(20, 8, false)).isLessThanOrEqualTo(BOUND_SECONDS);
  }

  /** A room that is warmed from nowhere, long after its heater last ran. */
  @ParameterizedTest
  @CsvSource({"20", "28", "NaN"})
  void heatThatBeginsByItself_isSeen(double outdoorC) {
    for (int i = 0; i < 360; i++) {
      now += 10;
      tick(28, outdoorC, false, false);
    }

    assertThat(secondsUntilSeen(outdoorC, 8, false)).isLessThanOrEqualTo(BOUND_SECONDS);
  }

  private void heats() {
    for (int i = 0; i < 30; i++) {
      now += 10;
      tick(26 + i / 15.0, UNKNOWN, true, false);
    }
  }

  private long secondsUntilSeen(double outdoorC, double riseK, boolean isVenting) {
    long from = now;
    while (!stuck.isStuck() && now - from < 4 * 3600) {
      now += 10;
      double air = 28 + riseK * (1 - Math.exp(-(now - from) / RISES_WITHIN_SECONDS));
      tick(air, outdoorC, false, isVenting);
    }
    return now - from;
  }

  private void tick(double airC, double outdoorC, boolean isHeating, boolean isVenting) {
    stuck.tick(now, airC, UPPER_C, outdoorC, isHeating, isVenting, isFresh, LIFT_K);
  }
}
