package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/** A heater that goes on, and a probe that repeats itself: neither is taken for the other. */
class HeaterAndProbeTest {
  private static final double LIFT_K = 2;
  private static final double OUTDOOR_C = -5;

  private final StuckHeaterDetector stuck = new StuckHeaterDetector();
  private final DeadHeaterDetector check = new DeadHeaterDetector();
  private final FrozenProbeDetector frozen = new FrozenProbeDetector();
  private long now;
  private double roomC = 12;

  private void pass(int minutes, double kelvin, boolean isHeating) {
    int ticks = minutes * 6;
    for (int i = 0; i < ticks; i++) {
      now += 10;
      roomC += kelvin / ticks;
      stuck.tick(now, roomC, 13, OUTDOOR_C, isHeating, false, false, LIFT_K);
      check.tick(now, roomC, isHeating, false);
      frozen.tick(now, Reading.of(roomC, 60), isHeating, isHeating);
    }
  }

  @Test
  void airThatKeepsItsLift_tenMinutesAfterTheHeaterWasSwitchedOff_isAHeaterThatDoesNotStop() {
    pass(5, 2, true);
    pass(9, 0.1, false);
    assertThat(stuck.isStuck()).isFalse();
    pass(2, 0.1, false);
    assertThat(stuck.isStuck()).isTrue();

    pass(20, -1.8, false);
    assertThat(stuck.isStuck()).isFalse();
  }

  @Test
  void airThatLosesItsLift_isWell() {
    pass(5, 2, true);
    pass(15, -1, false);
    assertThat(stuck.isStuck()).isFalse();
  }

  @Test
  void readingThatRepeatsItself_isNeitherAStuckNorADeadHeater_butAFrozenProbe() {
    pass(5, 2, true);
    pass(60, 0, false);
    assertThat(stuck.isStuck()).isFalse();
    assertThat(frozen.isFrozen()).isFalse();

    pass(16, 0, true);
    assertThat(frozen.isFrozen()).isTrue();
    assertThat(check.isDead()).isFalse();
    pass(60, 0, false);
    assertThat(stuck.isStuck()).isFalse();

    pass(1, -0.1, false);
    assertThat(frozen.isFrozen()).isFalse();
  }

  @Test
  void heaterThatWarmsNothing_isDead() {
    pass(20, 2, true);
    pass(20, -2, false);
    pass(11, -0.2, true);
    assertThat(check.isDead()).isTrue();
    assertThat(frozen.isFrozen()).isFalse();
  }

  @Test
  void heaterBesideAHumidifier_isNotDead_becauseEvaporatingWaterCools() {
    RoomDetectors watch = new RoomDetectors();
    watch(watch, 20, 2, true, false);
    watch(watch, 1, -0.2, false, false);
    watch(watch, 15, -0.3, true, true);
    assertThat(watch.isHeaterDead()).isFalse();

    watch(watch, 1, -0.2, false, false);
    watch(watch, 15, -0.3, true, false);
    assertThat(watch.isHeaterDead()).isTrue();
  }

  private void watch(
      RoomDetectors watch, int minutes, double kelvin, boolean isHeating, boolean isWatered) {
    int ticks = minutes * 6;
    for (int i = 0; i < ticks; i++) {
      now += 10;
      roomC += kelvin / ticks;
      watch.tick(
          now,
          WatchedAir.of((int) (roomC * 1000), 60_000),
          WatchedAir.of(-5_000, 80_000),
          isHeating,
          true,
          false,
          isWatered,
          Thousandths.NONE);
    }
  }

  @Test
  void thermometerWithoutHumidity_mayRepeatItselfWhileItsRoomIsHeated() {
    for (int i = 0; i < 180; i++) {
      now += 10;
      frozen.tick(now, Reading.ofTemperature(12), true, true);
    }
    assertThat(frozen.isFrozen()).isFalse();
  }
}
