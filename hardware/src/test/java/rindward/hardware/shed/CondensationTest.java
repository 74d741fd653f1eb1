package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.hardware.OutputKind;

/** Water falls on what is colder than the dew point, warms it, and goes again when it may. */
class CondensationTest {
  private static final OutdoorAir MILD = OutdoorAir.still(20, 60);

  private final RoomInputs on = new RoomInputs();
  private final RoomModel room =
      new RoomModel(BenchmarkShed.STANDARD.plan().rooms().get(0), 27, 80);

  @Test
  void coldFruitInWarmDampAir_getsWet() {
    room.load(FruitLoad.winterSquash("COLD", 400, 10));
    TestRooms.run(room, on, MILD, 600, 10);
    assertThat(room.lot("COLD").surfaceC()).isLessThan(room.dewPointC());
    assertThat(room.lot("COLD").condensateKg()).isPositive();
    assertThat(room.lot("COLD").isWet()).isTrue();
    assertThat(room.lot("COLD").massKg()).isEqualTo(400);
  }

  @Test
  void fruitAboveTheDewPoint_staysDry() {
    room.load(FruitLoad.winterSquash("WARM", 400, 24));
    TestRooms.run(room, on, MILD, 3600, 10);
    assertThat(room.lot("WARM").condensateKg()).isZero();
    assertThat(room.lot("WARM").isWet()).isFalse();
  }

  @Test
  void condensation_warmsTheFruitFasterThanDryAirWould() {
    RoomModel dry = new RoomModel(BenchmarkShed.STANDARD.plan().rooms().get(0), 27, 20);
    room.load(FruitLoad.winterSquash("SQ", 40, 10));
    dry.load(FruitLoad.winterSquash("SQ", 40, 10));
    TestRooms.run(room, on, MILD, 1800, 10);
    TestRooms.run(dry, on, MILD, 1800, 10);
    assertThat(room.lot("SQ").surfaceC()).isGreaterThan(dry.lot("SQ").surfaceC() + 0.5);
  }

  @Test
  void wetFruitInDryAir_driesAndIsCooledMeanwhile() {
    RoomModel dry = new RoomModel(BenchmarkShed.STANDARD.plan().rooms().get(0), 20, 40);
    FruitLoad wet = new FruitLoad("WET", 100, 20, 0.5, FruitPhysics.WINTER_SQUASH);
    dry.load(wet);
    TestRooms.run(dry, on, MILD, 1800, 10);
    assertThat(dry.lot("WET").surfaceC()).isLessThan(19.5);
    assertThat(dry.lot("WET").massKg()).isEqualTo(100);
    TestRooms.run(dry, on, MILD, 6 * 3600, 10);
    assertThat(dry.lot("WET").condensateKg()).isZero();
    assertThat(dry.lot("WET").massKg()).isLessThan(100);
  }

  @Test
  void coldWall_takesWaterAndLetsTheExcessRunOff() {
    RoomModel bare = new RoomModel(BenchmarkShed.BARE_BOARDS.plan().rooms().get(0), 20, 80);
    on.set(OutputKind.HEATER, 1);
    on.set(OutputKind.HUMIDIFIER, 1);
    OutdoorAir frost = OutdoorAir.still(-10, 70);
    TestRooms.run(bare, on, frost, 86400, 10);
    double facesM2 = 14.8 + 6 + 2 + 6;
    assertThat(bare.wallFilmKg()).isPositive().isLessThanOrEqualTo(0.05 * facesM2);
    on.set(OutputKind.HUMIDIFIER, 0);
    TestRooms.run(bare, on, frost, 20 * 86400, 10);
    assertThat(bare.wallFilmKg()).isZero();
  }

  @Test
  void wallFilm_holdsBackWhatTheFilmEquationSays() {
    // One face of 1 m2, U 3.2, in air of 20 C and 90 %, outdoors -10 C. By hand: face without
    // condensate 20 - 3.2 x 0.13 x 30 = 7.52 C, p_s 1038 Pa, p 2105 Pa; wet film 2.5 W/(m2 K) gives
    // g = 2.5/(1211.4 x 461.523 x 280.67) = 1.5932e-8 kg/(s Pa); warming by its own latent heat,
    // g h dp/dT Rsi (1 - U Rsi) = 1.5932e-8 x 2.4832e6 x 70.9 x 0.13 x 0.584 = 0.2129, so
    // m = g 1067/1.2129 = 1.4015e-5 kg/s.
    Envelope.Surface face = new Envelope.Surface("face", 1, 3.2, false);
    WallFilm film = new WallFilm(face);
    RoomVapour vapour = new RoomVapour(1e12, 20, 0.9 * 2338.8);
    vapour.begin();
    film.offerWater(vapour, 20, OutdoorAir.still(-10, 50), 10);
    film.exchangeWater(vapour.step(10), 10);
    assertThat(film.filmKg() / 10).isCloseTo(1.4015e-5, offset(5e-8));
    // Of the heat, the share U Rsi = 0.416 is lost to outdoors.
    assertThat(film.latentW()).isCloseTo(1.4015e-5 * 2.4832e6 * 0.584, offset(0.1));
  }

  @Test
  void airThatCannotHoldItsWater_lessensItToSaturation() {
    RoomPlan plan =
        TestRooms.airOnly(30 * 1211.4, TestRooms.TIGHT, Equipment.NONE.withHumidifier(2, 0));
    RoomModel foggy = new RoomModel(plan, 15, 95);
    on.set(OutputKind.HUMIDIFIER, 1);
    TestRooms.run(foggy, on, MILD, 3600, 10);
    assertThat(foggy.relativeHumidityPct()).isCloseTo(100, offset(0.1));
    assertThat(foggy.waterBalance().errorShare()).isLessThan(1e-9);
  }

  @Test
  void film_neverGoesBelowNothing() {
    RoomModel dry = new RoomModel(BenchmarkShed.WITHOUT_BUFFER.plan().rooms().get(0), 25, 30);
    for (int i = 0; i < 12; i++) {
      double wetKg = 1e-5 * Math.pow(2, i);
      dry.load(new FruitLoad("L" + i, 10, 25, wetKg, FruitPhysics.WINTER_SQUASH));
    }
    for (int i = 0; i < 600; i++) {
      dry.step(on, MILD, 0, 60);
      assertThat(dry.lots()).allMatch(lot -> lot.condensateKg() >= 0);
    }
    List<Double> left = dry.lots().stream().map(FruitLot::condensateKg).toList();
    assertThat(left).containsOnly(0.0);
  }
}
