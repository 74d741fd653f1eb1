package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.hardware.OutputKind;

/** The whole shed through weeks of weather and careless hands: balances, limits, steps. */
class SeasonRunTest {
  private static final Equipment EVERYTHING =
      new Equipment(1500, 0.1, 20, 25, 0.5, 30, 0.3, 200, 1500, 3);
  private static final long START = 1_790_000_000L;

  private final Weather weather = GeneratedWeather.temperate(7);

  @ParameterizedTest
  @EnumSource(BenchmarkShed.class)
  void randomOutputsDoorsAndFruit_heatAndWaterAreKept(BenchmarkShed variant) {
    ShedModel shed = livedIn(variant, 11, 10, 30);
    for (RoomPlan room : shed.plan().rooms()) {
      RoomModel model = shed.room(room.name());
      // The promise is 0.1 %; the scheme keeps both to rounding, so far less is asked for.
      assertThat(model.heatBalance().errorShare()).isLessThan(1e-8);
      assertThat(model.waterBalance().errorShare()).isLessThan(1e-8);
      assertThat(model.waterBalance().in()).isGreaterThan(10);
      // Nearly nothing may be invented to keep films from going below zero.
      assertThat(model.waterBalance().clamped()).isLessThan(1e-3 * model.waterBalance().in());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 10, 17, 60})
  void anyTickUpToAMinute_staysWithinWhatWeatherAndHeaterAllow(double tickSeconds) {
    ShedModel shed = livedIn(BenchmarkShed.STANDARD, 3, tickSeconds, tickSeconds < 10 ? 2 : 15);
    for (RoomPlan room : shed.plan().rooms()) {
      assertThat(shed.room(room.name()).airC()).isBetween(-30.0, 80.0);
      assertThat(shed.room(room.name()).relativeHumidityPct()).isBetween(0.0, 100.001);
    }
  }

  @Test
  void undividedStepsOfAMinute_areStableToo() {
    RoomModel room = loaded();
    RoomInputs on = new RoomInputs();
    double before = room.airC();
    double roughest = 0;
    OutdoorAir frost = OutdoorAir.still(-15, 80);
    for (int i = 0; i < 24 * 60; i++) {
      room.step(on, frost, 0, 60);
      if (i > 60) {
        roughest = Math.max(roughest, Math.abs(room.airC() - before));
      }
      before = room.airC();
    }
    // With all still, an unstable scheme would swing; the room cools by far less than this.
    assertThat(roughest).isLessThan(0.1);
  }

  @Test
  void halvingTheStep_halvesTheErrorWhileWaterCondenses() {
    double exact = airAfterHalfAnHour(0.3125);
    double coarse = Math.abs(airAfterHalfAnHour(20) - exact);
    double fine = Math.abs(airAfterHalfAnHour(10) - exact);
    assertThat(coarse / fine).isBetween(1.7, 2.4);
    assertThat(fine).isLessThan(0.05);
  }

  private static double airAfterHalfAnHour(double dtSeconds) {
    RoomModel room = loaded();
    RoomInputs on = new RoomInputs();
    on.set(OutputKind.HEATER, 1);
    on.set(OutputKind.HUMIDIFIER, 1);
    TestRooms.run(room, on, OutdoorAir.still(5, 80), 1800, dtSeconds);
    return room.airC();
  }

  private static RoomModel loaded() {
    RoomModel room = new RoomModel(BenchmarkShed.STANDARD.plan().rooms().get(0), 22, 80);
    room.load(FruitLoad.winterSquash("COLD", 300, 8));
    room.load(FruitLoad.winterSquash("WARM", 100, 24));
    return room;
  }

  @Test
  void roomsSideBySide_shareHeatThroughTheirPartition() {
    ShedModel shed = new ShedModel(BenchmarkShed.STANDARD.plan(), 10, 50);
    shed.inputs("curing").set(OutputKind.HEATER, 1);
    for (int i = 0; i < 1440; i++) {
      shed.step(OutdoorAir.still(10, 50), 60);
    }
    assertThat(shed.room("storage").airC()).isGreaterThan(12);
    assertThat(shed.room("storage").heatBalance().errorShare()).isLessThan(1e-9);
  }

  private ShedModel livedIn(BenchmarkShed variant, long seed, double tickSeconds, int days) {
    SplittableRandom random = new SplittableRandom(seed);
    ShedPlan plan = variant.plan();
    for (RoomPlan room : plan.rooms()) {
      plan = plan.withEquipment(room.name(), EVERYTHING);
    }
    ShedModel shed = new ShedModel(plan, 15, 65);
    long ticks = (long) (days * 86400 / tickSeconds);
    long hour = Math.max(1, (long) (3600 / tickSeconds));
    for (long i = 0; i < ticks; i++) {
      if (i % hour == 0) {
        for (RoomPlan room : plan.rooms()) {
          meddle(shed, room.name(), variant.fruitKg(), random);
        }
      }
      shed.step(weather.at(START + (long) (i * tickSeconds)), tickSeconds);
    }
    return shed;
  }

  private static void meddle(ShedModel shed, String room, double kg, SplittableRandom random) {
    RoomInputs on = shed.inputs(room);
    for (OutputKind kind : OutputKind.values()) {
      double duty = random.nextInt(3) == 0 ? random.nextDouble() : 0;
      on.set(kind, shed.room(room).airC() > 30 && kind == OutputKind.HEATER ? 0 : duty);
    }
    on.openDoor(random.nextInt(20) == 0 ? random.nextDouble() : 0);
    RoomModel model = shed.room(room);
    if (!model.lots().isEmpty() && random.nextInt(48) == 0) {
      model.remove(model.lots().get(0).code());
    } else if (model.lots().size() < 4 && random.nextInt(12) == 0) {
      double fruitC = 2 + 25 * random.nextDouble();
      double wetKg = random.nextDouble();
      String code = "LOT-" + random.nextInt(1_000_000);
      model.load(new FruitLoad(code, kg / 4, fruitC, wetKg, FruitPhysics.WINTER_SQUASH));
    }
  }
}
