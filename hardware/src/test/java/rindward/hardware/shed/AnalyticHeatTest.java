package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.hardware.OutputKind;

/**
 * Heat against closed solutions. The figures were computed from the formulas named at each test and
 * a second time by a Runge-Kutta solver; they are printed to six decimals. Second order at 10 s
 * errs by 0.04 (dt/tau)^2 (t/tau) e^(-t/tau) of the swing, below 1e-6 K where tau is 10000 s.
 */
class AnalyticHeatTest {
  private static final double PRINTED = 1e-6;
  private static final OutdoorAir FIVE_DEGREES = OutdoorAir.still(5, 0);

  private final RoomInputs on = new RoomInputs();

  /** T = T_inf + (T_0 - T_inf) e^(-t/tau), C 500 kJ/K, H 50 W/K, Q 1000 W, outside 5 C. */
  @ParameterizedTest
  @CsvSource({
    "600, 10.873532",
    "3600, 14.534855",
    "10000, 19.481808",
    "36000, 24.590144",
    "86400, 24.997347"
  })
  void heaterOn_airFollowsTheStepResponse(double seconds, double expectedC) {
    RoomModel room =
        new RoomModel(
            TestRooms.airOnly(500e3, TestRooms.losing(50), TestRooms.heater(1000)), 10, 10);
    on.set(OutputKind.HEATER, 1);
    TestRooms.run(room, on, FIVE_DEGREES, seconds, 10);
    assertThat(room.airC()).isCloseTo(expectedC, offset(PRINTED));
  }

  /** T = T_o + 20 e^(-t/tau). */
  @ParameterizedTest
  @CsvSource({
    "600, 23.835291",
    "3600, 18.953527",
    "10000, 12.357589",
    "36000, 5.546474",
    "86400, 5.003538"
  })
  void heaterOff_airCoolsExponentially(double seconds, double expectedC) {
    RoomModel room =
        new RoomModel(TestRooms.airOnly(500e3, TestRooms.losing(50), Equipment.NONE), 25, 10);
    TestRooms.run(room, on, FIVE_DEGREES, seconds, 10);
    assertThat(room.airC()).isCloseTo(expectedC, offset(PRINTED));
  }

  /** On tau ln((T_inf - 18)/(T_inf - 20)) = 3364.722 s, off 1431.008 s; steps of 1 s see +-1 s. */
  @Test
  void onOffControl_cyclesWithTheComputedPeriod() {
    RoomModel room =
        new RoomModel(
            TestRooms.airOnly(500e3, TestRooms.losing(50), TestRooms.heater(1000)), 18, 10);
    on.set(OutputKind.HEATER, 1);
    int onSeconds = 0;
    double sumC = 0;
    while (room.airC() < 20) {
      room.step(on, FIVE_DEGREES, 0, 1);
      sumC += room.airC();
      onSeconds++;
    }
    on.set(OutputKind.HEATER, 0);
    int offSeconds = 0;
    while (room.airC() > 18) {
      room.step(on, FIVE_DEGREES, 0, 1);
      sumC += room.airC();
      offSeconds++;
    }
    assertThat((double) onSeconds).isCloseTo(3364.722, offset(1.0));
    assertThat((double) offSeconds).isCloseTo(1431.008, offset(1.0));
    // Mean T_o + duty Q/H; one second more or less of a 2 K swing moves it by less than 0.001 K.
    assertThat(sumC / (onSeconds + offSeconds)).isCloseTo(19.032157, offset(1e-3));
  }

  /**
   * Air 60 kJ/K and fruit 500 kg x 3.9 kJ/(kg K) of one temperature, 250 W/K between them: modes of
   * 195.7987 s and 47804.2013 s. At 1 s the fast mode errs by less than 2e-6 K.
   */
  @ParameterizedTest
  @CsvSource({
    "60, 11.080269, 10.004350",
    "600, 14.068702, 10.215084",
    "3600, 15.516970, 11.718178",
    "21600, 21.630073, 19.023211",
    "86400, 31.553089, 30.881012"
  })
  void airAndFruit_followTheirTwoModes(double seconds, double airC, double fruitC) {
    RoomModel room = airAndFruit();
    TestRooms.run(room, on, FIVE_DEGREES, seconds, 1);
    assertThat(room.airC()).isCloseTo(airC, offset(2e-6));
    assertThat(room.lot("SQ").surfaceC()).isCloseTo(fruitC, offset(2e-6));
    assertThat(room.lot("SQ").coreC()).isEqualTo(room.lot("SQ").surfaceC());
  }

  @Test
  void heatAlone_isSecondOrder_halvingTheStepQuartersTheError() {
    double coarse = errorAt60Seconds(20);
    double fine = errorAt60Seconds(10);
    assertThat(coarse / fine).isBetween(3.5, 4.5);
  }

  private double errorAt60Seconds(double dtSeconds) {
    RoomModel room = airAndFruit();
    TestRooms.run(room, on, FIVE_DEGREES, 60, dtSeconds);
    return Math.abs(room.airC() - 11.080269);
  }

  private RoomModel airAndFruit() {
    RoomModel room =
        new RoomModel(
            TestRooms.airOnly(60e3, TestRooms.losing(50), TestRooms.heater(1500)), 10, 10);
    room.load(new FruitLoad("SQ", 500, 10, 0, new FruitPhysics(3900, 0.5, 0, 1, 0, 0, 2)));
    on.set(OutputKind.HEATER, 1);
    return room;
  }

  /**
   * Shell and core in air that stands still at 20 C:
   *
   * <pre>T'' + (a + b + c) T' + a c T = 0 about 20 C,  a = Gs/Cs, b = Gi/Cs, c = Gi/Cc</pre>
   */
  @Test
  void largeFruit_shellAndCoreFollowTheirOwnTwoModes() {
    RoomModel room =
        new RoomModel(TestRooms.airOnly(TestRooms.FIXED, TestRooms.TIGHT, Equipment.NONE), 20, 10);
    room.load(new FruitLoad("SQ", 100, 10, 0, new FruitPhysics(3890, 0.14, 1, 0.3, 0, 0, 2)));
    double a = 0.14 / (3890 * 0.3);
    double b = 1 / (3890 * 0.3);
    double c = 1 / (3890 * 0.7);
    double half = (a + b + c) / 2;
    double root = Math.sqrt(half * half - a * c);
    double slow = -half + root;
    double fast = -half - root;
    // Both start 10 K below the air: x(0) = -10 and x'(0) = 10 a for the shell, y'(0) = 0.
    double slowShell = (10 * a + 10 * fast) / (slow - fast);
    double fastShell = -10 - slowShell;
    TestRooms.run(room, on, OutdoorAir.still(20, 0), 3600, 10);
    double shellC = 20 + slowShell * Math.exp(slow * 3600) + fastShell * Math.exp(fast * 3600);
    double coreC =
        20
            + slowShell * c / (slow + c) * Math.exp(slow * 3600)
            + fastShell * c / (fast + c) * Math.exp(fast * 3600);
    // Fast mode 770 s at steps of 10 s: 0.04 (10/770)^2 of some kelvins.
    assertThat(room.lot("SQ").surfaceC()).isCloseTo(shellC, offset(1e-5));
    assertThat(room.lot("SQ").coreC()).isCloseTo(coreC, offset(1e-5));
  }

  @Test
  void noSource_everythingComesToTheOutdoorTemperature() {
    RoomModel room = new RoomModel(BenchmarkShed.WITHOUT_BUFFER.plan().rooms().get(0), 25, 50);
    room.load(new FruitLoad("SQ", 400, 30, 0, new FruitPhysics(3890, 0.14, 1, 0.3, 0, 0, 2)));
    TestRooms.run(room, on, OutdoorAir.still(8, 50), 40 * 86400, 60);
    assertThat(room.airC()).isCloseTo(8, offset(1e-3));
    assertThat(room.massC()).isCloseTo(8, offset(1e-3));
    assertThat(room.lot("SQ").coreC()).isCloseTo(8, offset(1e-3));
  }
}
