package rindward.controller.diagnosis;

import java.io.IOException;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.RoomFacts;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Relay;
import rindward.hardware.Thousandths;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;
import rindward.hardware.shed.SimulatedShed;

/**
 * One storage room of the benchmark shed in December under a thermostat with two minutes of least
 * times, vented ten minutes twice a day, watched for days; then something breaks.
 *
 * @param kg fruit in the room
 * @param seed of weather and probes
 * @param setC the thermostat's set point; the threshold is 10 C
 * @param heaterW the heater
 * @param fault what breaks; null for nothing
 * @param day after how many days it breaks
 * @param hour at which hour of that day
 * @param hours how long it is watched from then on
 */
record ColdTrial(
    double kg,
    long seed,
    double setC,
    double heaterW,
    @Nullable ShedFault fault,
    int day,
    int hour,
    int hours) {
  static final int NEVER = -1;
  private static final String STORAGE = BenchmarkShed.STORAGE;
  private static final int THRESHOLD_MILLI_C = 10_000;
  private static final int TICK_SECONDS = 10;
  private static final long START = Instant.parse("2026-12-01T00:00:00Z").getEpochSecond();

  /** A heater of the usual 750 W that dies. */
  static ColdTrial deadHeater(double kg, long seed, double setC) {
    ShedFault dead = ShedFault.of(ShedFault.Kind.OUTPUT_DEAD, STORAGE + "-heater");
    return new ColdTrial(kg, seed, setC, 750, dead, 3 + (int) seed % 5, (int) (seed * 7) % 24, 8);
  }

  /**
   * What came of it, in minutes from the fault; {@link #NEVER} for what did not happen.
   *
   * @param crossed when the room's true air fell below the threshold, ten minutes averaged
   * @param spoken when the forecast first spoke
   * @param said in how many minutes it then saw the crossing
   * @param heaterDead when the heater was found dead
   * @param fallSeen when the air was found to fall too fast
   * @param falseForecasts how often it spoke before the fault
   * @param falseHeater how often the heater was called dead before the fault
   * @param falseFalls how often a fast fall was seen before the fault
   */
  record Outcome(
      double crossed,
      double spoken,
      int said,
      double heaterDead,
      double fallSeen,
      int falseForecasts,
      int falseHeater,
      int falseFalls) {
    /** Minutes between the first word and the crossing. */
    double lead() {
      return crossed == NEVER || spoken == NEVER ? 0 : crossed - spoken;
    }

    /** The share of the lead that physics allows, three hours at most. */
    double share() {
      return Math.min(lead(), 180) / Math.min(crossed, 180);
    }
  }

  Outcome run() throws IOException {
    AtomicLong seconds = new AtomicLong(START);
    ShedPlan plan = BenchmarkShed.STANDARD.plan();
    plan = plan.withEquipment(STORAGE, plan.rooms().get(1).equipment().withHeater(heaterW));
    SimulatedShed shed =
        new SimulatedShed(
            new ShedModel(plan, setC, 60),
            GeneratedWeather.temperate(seed),
            seed,
            () -> seconds.get() * 1000);
    shed.load(STORAGE, FruitLoad.winterSquash("SQ", kg, setC + 0.3));
    Probe air = shed.probe(STORAGE + "-air");
    Probe outdoor = shed.probe("outdoor");
    Relay heater = shed.relay(STORAGE + "-heater");
    Relay exhaust = shed.relay(STORAGE + "-exhaust");
    RoomDetectors watch = new RoomDetectors();
    long breaks = START + day * 86_400L + hour * 3600L;
    boolean isHeating = false;
    long switched = 0;
    double truth = setC;
    double crossed = NEVER;
    double spoken = NEVER;
    int said = NEVER;
    double dead = NEVER;
    double fell = NEVER;
    int falseForecasts = 0;
    int falseHeater = 0;
    int falseFalls = 0;
    boolean wasForecast = false;
    boolean wasDead = false;
    boolean wasFalling = false;
    for (long now = START; now < breaks + hours * 3600L; now += TICK_SECONDS) {
      seconds.set(now);
      if (now == breaks && fault != null) {
        shed.inject(fault);
      }
      Reading inside = air.read();
      Reading outside = outdoor.read();
      int room = inside.temperatureMilliC();
      if (now - switched >= 120) {
        boolean wanted = room < setC * 1000 + (isHeating ? 250 : -250);
        switched = wanted == isHeating ? switched : now;
        isHeating = wanted;
      }
      boolean isVenting = now < breaks - 3600 && now / 60 % 720 < 10;
      heater.set(isHeating);
      exhaust.set(isVenting);
      watch.tick(
          now - START,
          WatchedAir.of(room, inside.humidityMilliPct()),
          WatchedAir.of(outside.temperatureMilliC(), outside.humidityMilliPct()),
          isHeating,
          true,
          isVenting,
          false,
          THRESHOLD_MILLI_C);
      boolean isForecast = watch.minutesToCold() != RoomFacts.NOT_FORECAST;
      double minutes = (now - breaks) / 60.0;
      if (minutes < 0) {
        falseForecasts += isForecast && !wasForecast ? 1 : 0;
        falseHeater += watch.isHeaterDead() && !wasDead ? 1 : 0;
        falseFalls += watch.isFallingFast() && !wasFalling ? 1 : 0;
        truth = Thousandths.toDouble(room);
      } else {
        said = isForecast && spoken == NEVER ? watch.minutesToCold() : said;
        spoken = isForecast && spoken == NEVER ? minutes : spoken;
        dead = watch.isHeaterDead() && dead == NEVER ? minutes : dead;
        fell = watch.isFallingFast() && fell == NEVER ? minutes : fell;
        truth += (shed.truth(STORAGE).airC() - truth) * TICK_SECONDS / 600;
        if (truth < 10) {
          crossed = minutes;
          break;
        }
      }
      wasForecast = isForecast;
      wasDead = watch.isHeaterDead();
      wasFalling = watch.isFallingFast();
    }
    return new Outcome(crossed, spoken, said, dead, fell, falseForecasts, falseHeater, falseFalls);
  }
}
