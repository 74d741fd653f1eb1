package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.hardware.air.SaturationPressure;

/** An open door and a dead heater, told apart by the water in the air. */
class OpenDoorDetectorTest {
  private static final double SATURATION_PA = SaturationPressure.overIceOrWaterPa(12);
  private static final double DRY_PA = 0.25 * SATURATION_PA;

  private final OpenDoorDetector inrush = new OpenDoorDetector();
  private long now;
  private double roomC = 12;
  private double vapourPa = 0.6 * SATURATION_PA;
  private double outdoorPa = DRY_PA;
  private boolean isHeating;
  private boolean isVenting;
  private boolean isWatered;

  /** Lets minutes pass in which temperature and vapour change evenly. */
  private void pass(int minutes, double kelvin, double sharePct) {
    int ticks = minutes * 6;
    for (int i = 0; i < ticks; i++) {
      now += 10;
      roomC += kelvin / ticks;
      vapourPa += sharePct / 100 * SATURATION_PA / ticks;
      inrush.tick(now, roomC, vapourPa, SATURATION_PA, outdoorPa, isHeating, isVenting, isWatered);
    }
  }

  @Test
  void doorAjar_isSeenWithinThreeMinutes_untilItIsShutAndTheAirIsDampAgain() {
    pass(60, 0, 0);
    pass(3, -1.5, -4);
    assertThat(inrush.isSeen()).isTrue();

    pass(180, -2, -6);
    assertThat(inrush.isSeen()).isTrue();
    pass(10, 3, 10);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void heaterThatDies_takesTheWarmthButNotTheWater() {
    isHeating = true;
    pass(60, 0, 0);
    pass(5, -2, -0.9);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void slowDrying_isNoDoor() {
    pass(60, 0, 0);
    pass(240, -1, -20);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void asDampOutside_nothingCanBeTold() {
    outdoorPa = 0.58 * SATURATION_PA;
    pass(60, 0, 0);
    pass(3, -1.5, -4);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void airThatIsLetInOnPurpose_andAQuarterOfAnHourAfterwards_isNoDoor() {
    pass(60, 0, 0);
    isVenting = true;
    pass(3, -1.5, -4);
    isVenting = false;
    pass(14, 0, -6);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void heaterAndHumidifierThatLoseTheirSupplyTogether_areNoDoor() {
    isHeating = true;
    isWatered = true;
    pass(60, 0, 0);
    pass(5, -2, -8);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void quickHumidityInRisingAir_countsOnlyWhereTheLastHalfHourKnowsIt() {
    pass(60, 0, 0);
    isHeating = true;
    pass(2, 2, -4);
    assertThat(inrush.isSeen()).isFalse();
  }

  @Test
  void unknownHumidity_isNotJudged() {
    pass(60, 0, 0);
    vapourPa = Double.NaN;
    pass(30, -5, 0);
    assertThat(inrush.isSeen()).isFalse();
  }
}
