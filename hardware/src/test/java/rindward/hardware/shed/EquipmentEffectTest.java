package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.hardware.OutputKind;

/** What each output and opening does to the room. */
class EquipmentEffectTest {
  private static final OutdoorAir OUTSIDE = OutdoorAir.still(5, 80);

  private final RoomInputs on = new RoomInputs();

  private static RoomPlan room(Equipment equipment) {
    return BenchmarkShed.WITHOUT_BUFFER.plan().rooms().get(0).withEquipment(equipment);
  }

  @Test
  void leakage_growsWithWindAsTheBenchmarkStates() {
    // 0.6/h x (0.4 + 0.125 x 4 m/s) = 0.54/h of 14.4 m3.
    OutdoorAir windy = new OutdoorAir(5, 700, 101325, 4, 0, 5);
    assertThat(Ventilation.m3PerS(room(Equipment.NONE), on, windy, 12))
        .isCloseTo(0.54 * 14.4 / 3600, offset(1e-12));
  }

  @Test
  void exhaustAndLeaks_addAsSquares() {
    // Calm: leak 0.6/h x 0.4 x 14.4 m3 / 3600 = 0.00096 m3/s; ASHRAE Fundamentals 2017 ch. 16.
    on.set(OutputKind.EXHAUST, 1);
    double m3PerS = Ventilation.m3PerS(room(Equipment.NONE.withExhaust(0.03, 15)), on, OUTSIDE, 12);
    assertThat(m3PerS).isCloseTo(Math.sqrt(0.03 * 0.03 + 0.00096 * 0.00096), offset(1e-12));
  }

  @Test
  void openDoor_exchangesWhatBuoyancyDrives() {
    // 0.6 x 1.52/3 sqrt(9.81 x 1.9 x 10/283.15) = 0.2467 m3/s, and the leak.
    on.openDoor(1);
    assertThat(Ventilation.m3PerS(room(Equipment.NONE), on, OUTSIDE, 15))
        .isCloseTo(0.2467 + 0.00096, offset(1e-4));
  }

  @Test
  void dehumidifier_driesAndWarms_andItsElectricityAndLatentHeatStayInside() {
    RoomModel model = new RoomModel(room(Equipment.NONE.withDehumidifier(0.3, 200)), 15, 70);
    on.set(OutputKind.DEHUMIDIFIER, 1);
    double start = model.heatBalance().in();
    model.step(on, OutdoorAir.still(15, 70), 0, 10);
    double heatW = (model.heatBalance().in() - start) / 10;
    // 200 W + 0.3/3600 kg/s x 2.4656 MJ/kg = 405.5 W
    assertThat(heatW).isCloseTo(405.5, offset(0.1));
    assertThat(model.relativeHumidityPct()).isLessThan(70);
    assertThat(model.kWh(OutputKind.DEHUMIDIFIER)).isCloseTo(200 * 10 / 3.6e6, offset(1e-12));
  }

  @Test
  void dehumidifier_doesNothingInDryAir() {
    RoomModel model = new RoomModel(room(Equipment.NONE.withDehumidifier(0.3, 200)), 15, 15);
    on.set(OutputKind.DEHUMIDIFIER, 1);
    TestRooms.run(model, on, OutdoorAir.still(15, 15), 3600, 10);
    assertThat(model.relativeHumidityPct()).isPositive();
    assertThat(model.waterBalance().errorShare()).isLessThan(1e-9);
  }

  @Test
  void cooler_coolsAndCondenses_andUsesItsShareOfElectricity() {
    RoomModel model = new RoomModel(room(Equipment.NONE.withCooler(800, 4)), 20, 80);
    double before = model.vapourPressurePa();
    on.set(OutputKind.COOLER, 1);
    TestRooms.run(model, on, OutdoorAir.still(20, 80), 3600, 10);
    assertThat(model.airC()).isLessThan(17.5);
    assertThat(model.vapourPressurePa()).isLessThan(before);
    assertThat(model.kWh(OutputKind.COOLER)).isCloseTo(0.2, offset(1e-9));
    assertThat(model.heatBalance().errorShare()).isLessThan(1e-9);
  }

  @Test
  void humidifier_coolsTheAirByWhatItsWaterTakes() {
    RoomModel dry = new RoomModel(room(Equipment.NONE.withHumidifier(0.3, 0)), 25, 40);
    on.set(OutputKind.HUMIDIFIER, 1);
    TestRooms.run(dry, on, OutdoorAir.still(25, 40), 1800, 10);
    assertThat(dry.airC()).isLessThan(24.5);
    assertThat(dry.relativeHumidityPct()).isGreaterThan(60);
  }

  @Test
  void heaterHeld_roomSettlesWhereLossesMeetIt() {
    // Steady state without fruit, timber, sun or wind: T = T_o + (Q + 25 W) / (U A + rho cp V n).
    RoomPlan plan = room(new Equipment(200, 0, 0, 25, 0, 0, 0, 0, 0, 1));
    RoomModel model = new RoomModel(plan, 15, 20);
    on.set(OutputKind.HEATER, 1);
    on.set(OutputKind.CIRCULATION, 1);
    OutdoorAir dry = OutdoorAir.still(5, 40);
    TestRooms.run(model, on, dry, 15 * 86400, 60);
    double lossWPerK =
        14.8 * 0.53 + 6 * 0.45 + 2 * 1.5 + 6 * 0.45 + 1211.4 * 0.6 * 0.4 * 14.4 / 3600;
    assertThat(model.airC()).isCloseTo(5 + 225 / lossWPerK, offset(1e-3));
  }

  @Test
  void respiration_warmsFruitByItsQ10() {
    // 1 t at 22.5 C: 25 W x 2.2 = 55 W into 3.89 MJ/K is 0.0509 K an hour, in a shut-off room.
    RoomPlan plan = TestRooms.airOnly(1, TestRooms.TIGHT, Equipment.NONE);
    RoomModel model = new RoomModel(plan, 22.5, 99.9);
    FruitPhysics warm = new FruitPhysics(3890, 0.14, 1, 0.3, 0, 0.025, 2.2);
    model.load(new FruitLoad("SQ", 1000, 22.5, 0, warm));
    TestRooms.run(model, on, OUTSIDE, 3600, 10);
    assertThat(model.lot("SQ").meanC()).isCloseTo(22.5 + 0.0509, offset(5e-4));
  }

  @Test
  void sun_warmsThroughTheAperture() {
    RoomModel model = new RoomModel(room(Equipment.NONE), 10, 50);
    OutdoorAir sunny = new OutdoorAir(10, 600, 101325, 0, 800, 10);
    model.step(on, sunny, 0, 10);
    assertThat(model.heatBalance().in()).isCloseTo(0.19 * 800 * 10, offset(1e-6));
  }

  @Test
  void furnishedShed_hasARelayForEachOutputAndProbesForEachRoom() {
    ShedPlan plan = BenchmarkShed.STANDARD.plan();
    assertThat(plan.relays().stream().map(RelayPlan::name))
        .contains("curing-heater", "storage-exhaust", "curing-humidifier")
        .doesNotContain("curing-dehumidifier");
    assertThat(plan.probes().stream().map(ProbePlan::name).toList())
        .isEqualTo(
            List.of(
                "curing-air",
                "curing-corner",
                "curing-pulp",
                "storage-air",
                "storage-corner",
                "storage-pulp",
                "outdoor"));
  }
}
