package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.OutputKind;
import rindward.hardware.air.SaturationPressure;

/**
 * Water against closed solutions in a room of 30 m3 whose temperatures stand still. The vapour step
 * is exact for what it holds, so steps of a minute reach the printed six decimals. Transpiration
 * after Becker and Fricke 1996.
 */
class AnalyticWaterTest {
  private static final double PRINTED = 2e-6;
  private static final double SATURATION_27_PA = SaturationPressure.overIceOrWaterPa(27);
  private static final OutdoorAir OUTSIDE = OutdoorAir.still(5, 90);

  private final RoomInputs on = new RoomInputs();

  /** p = p_inf + (p_0 - p_inf) e^(-t n): 0.5 air changes an hour, 0.2 kg/h, 27 C. */
  @ParameterizedTest
  @CsvSource({
    "1800, 1193.796271, 33.464870",
    "7200, 1952.774172, 54.740776",
    "21600, 2540.295570, 71.210359",
    "86400, 2632.241686, 73.787821"
  })
  void humidifierOn_vapourFollowsTheAirChange(
      double seconds, double expectedPa, double expectedPct) {
    Equipment humidifier = Equipment.NONE.withHumidifier(0.2, 0);
    double startPct = 100 * OUTSIDE.vapourPressurePa() / SATURATION_27_PA;
    RoomModel room =
        new RoomModel(
            TestRooms.airOnly(TestRooms.FIXED, TestRooms.leaking(0.5), humidifier), 27, startPct);
    on.set(OutputKind.HUMIDIFIER, 1);
    TestRooms.run(room, on, OUTSIDE, seconds, 60);
    assertThat(room.vapourPressurePa()).isCloseTo(expectedPa, offset(PRINTED));
    assertThat(room.relativeHumidityPct()).isCloseTo(expectedPct, offset(PRINTED));
  }

  /**
   * p_inf = (k M p_s + g p_o) / (k M + g) with k M = 500 kg x 27 ng/(kg s Pa). The solution keeps
   * the mass; so that ours does too, the same k M comes from much fruit that hardly loses any.
   */
  @ParameterizedTest
  @CsvSource({
    "600, 1768.123354, 49.564586",
    "3600, 1713.267876, 48.026860",
    "7200, 1679.157175, 47.070658",
    "21600, 1648.852657, 46.221153"
  })
  void transpiringFruit_vapourSettlesBetweenSkinAndOutdoors(
      double seconds, double expectedPa, double expectedPct) {
    RoomModel room =
        new RoomModel(
            TestRooms.airOnly(TestRooms.FIXED, TestRooms.leaking(0.5), Equipment.NONE), 27, 50);
    room.load(still(5e8, 27, 27e-18));
    TestRooms.run(room, on, OUTSIDE, seconds, 60);
    assertThat(room.vapourPressurePa()).isCloseTo(expectedPa, offset(PRINTED));
    assertThat(room.relativeHumidityPct()).isCloseTo(expectedPct, offset(PRINTED));
  }

  /** M = M_0 e^(-k VPD t), 900 Pa, in percent: 0.209732 in 1 day, 1.458917 in 7, 2.896550 in 14. */
  @ParameterizedTest
  @CsvSource({"1, 0.209732", "7, 1.458917", "14, 2.896550"})
  void constantDeficit_fruitDriesExponentially(int days, double expectedPct) {
    double startPct = 100 - 100 * 900 / SaturationPressure.overIceOrWaterPa(20);
    RoomPlan endless =
        new RoomPlan(
            "room", 1e15, 20, TestRooms.FIXED, 0, 0, TestRooms.TIGHT, Timber.NONE, Equipment.NONE);
    RoomModel room = new RoomModel(endless, 20, startPct);
    room.load(still(500, 20, 27e-12));
    TestRooms.run(room, on, OUTSIDE, days * 86400.0, 60);
    assertThat(100 * (1 - room.lot("SQ").massKg() / 500)).isCloseTo(expectedPct, offset(PRINTED));
  }

  @Test
  void warming_leavesTheDewPointAlone() {
    RoomModel room =
        new RoomModel(TestRooms.airOnly(20e3, TestRooms.TIGHT, TestRooms.heater(100)), 12, 60);
    double before = room.dewPointC();
    on.set(OutputKind.HEATER, 1);
    TestRooms.run(room, on, OUTSIDE, 3600, 10);
    assertThat(room.airC()).isGreaterThan(25);
    assertThat(room.dewPointC()).isCloseTo(before, offset(1e-9));
  }

  @Test
  void timber_takesUpWhatTheAirLosesAndGivesItBack() {
    RoomPlan plan =
        new RoomPlan(
            "room",
            30,
            20,
            TestRooms.FIXED,
            TestRooms.FIXED,
            1,
            TestRooms.TIGHT,
            new Timber(0.08, 3e-7),
            Equipment.NONE.withHumidifier(0.3, 0));
    RoomModel room = new RoomModel(plan, 20, 50);
    on.set(OutputKind.HUMIDIFIER, 1);
    TestRooms.run(room, on, OUTSIDE, 3600, 10);
    double dampestPct = room.relativeHumidityPct();
    on.set(OutputKind.HUMIDIFIER, 0);
    TestRooms.run(room, on, OUTSIDE, 86400 * 3, 60);
    // 0.3 kg shared by air (K p_s = 5.2 g per percent) and timber (80 g per percent).
    double perPct = 30 / (461.523 * 293.15) * SaturationPressure.overIceOrWaterPa(20) / 100;
    assertThat(dampestPct).isGreaterThan(room.relativeHumidityPct() + 5);
    assertThat(room.timberPct()).isCloseTo(50 + 0.3 / (0.08 + perPct), offset(1e-3));
    assertThat(room.relativeHumidityPct()).isCloseTo(room.timberPct(), offset(1e-3));
  }

  /** Returns fruit whose temperature stands still. */
  private static FruitLoad still(double massKg, double temperatureC, double kgPerSPa) {
    return new FruitLoad(
        "SQ", massKg, temperatureC, 0, new FruitPhysics(1e12, 0.1, 0, 1, kgPerSPa, 0, 2));
  }
}
