package rindward.controller.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.Controller;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.daemon.Time;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomPurpose;
import rindward.controller.room.Stock;
import rindward.controller.season.SeasonLoop.Watched;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.Equipment;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.OutputMeter;
import rindward.hardware.shed.ProbeErrors;
import rindward.hardware.shed.ProbePlan;
import rindward.hardware.shed.RelayPlan;
import rindward.hardware.shed.RoomPlan;
import rindward.hardware.shed.RoomTruth;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/**
 * One season in the benchmark shed: cures from 20 September and 5 October, 10 days each and a ramp
 * of 3, the store filling as they finish, 181 days in all. The curing room is scored while it
 * cures, the store from the day its first fruit arrives. Probes lag by a minute and are off by a
 * constant drawn from the seed, up to 0.2 K and 2 %.
 *
 * @param built the shed
 * @param heaterContact what switches the heaters: contacts are spared for 20 s
 * @param hasDehumidifier whether each room has one of 0.3 kg/h and 200 W
 */
record BenchmarkSeason(
    BenchmarkShed built, Weather weather, Contact heaterContact, boolean hasDehumidifier) {
  static final Instant START = Instant.parse("2023-09-20T06:00:00Z");
  static final int DAYS = 181;
  static final Duration TICK = Duration.ofSeconds(10);
  static final Range CURE = new Range(new Limits(26_000, 29_000), new Limits(75_000, 85_000));
  static final Range KEEP = new Range(new Limits(10_000, 15_000), new Limits(50_000, 70_000));

  private static final int CHILLING_MILLI_C = 10_000;
  private static final double CURE_DAYS = 10;
  private static final double RAMP_DAYS = 3;
  private static final int RAMP_MILLI_C_PER_DAY = 5_000;
  private static final double[] ARRIVALS = {0, 15};

  /**
   * What became of one room, and of its outputs.
   *
   * @param dosed whether its heater has a contact that does not wear
   */
  record Result(RoomScore score, Map<OutputKind, OutputMeter> meters, boolean dosed) {
    double kWh() {
      return meters.values().stream().mapToDouble(OutputMeter::kWh).sum();
    }

    double kWh(OutputKind kind) {
      OutputMeter meter = meters.get(kind);
      return meter == null ? 0 : meter.kWh();
    }

    double hoursOn(OutputKind kind) {
      OutputMeter meter = meters.get(kind);
      return meter == null ? 0 : meter.hoursOn();
    }
  }

  /** Returns the shed's plan, furnished. */
  ShedPlan plan() {
    ShedPlan plan = built.plan();
    List<RoomPlan> rooms = new ArrayList<>();
    for (RoomPlan room : plan.rooms()) {
      Equipment equipment = room.equipment();
      rooms.add(hasDehumidifier ? room.withEquipment(equipment.withDehumidifier(0.3, 200)) : room);
    }
    return ShedPlan.furnished(rooms, plan.partitionWPerK());
  }

  /** Returns what a room is for, so many days into the season. */
  static RoomDemand demand(String room, double day) {
    boolean cures = room.equals(BenchmarkShed.CURING);
    for (double arrival : ARRIVALS) {
      double since = day - arrival;
      if (cures && since >= 0 && since < CURE_DAYS + RAMP_DAYS) {
        Instant came = START.plusSeconds((long) (arrival * 86_400));
        Stock stock = new Stock(CHILLING_MILLI_C, came);
        return since < CURE_DAYS
            ? new RoomDemand(CURE, 0, stock, List.of())
            : new RoomDemand(KEEP, RAMP_MILLI_C_PER_DAY, stock, List.of());
      }
    }
    return !cures && day >= ARRIVALS[0] + CURE_DAYS + RAMP_DAYS
        ? new RoomDemand(KEEP, 0, new Stock(CHILLING_MILLI_C, null), List.of())
        : new RoomDemand(null, 0, Stock.UNTOLD, List.of());
  }

  /** Counts one room's tick into its score. */
  static void score(RoomScore score, String room, RoomDemand demand, RoomTruth truth) {
    score.countHarm(truth, CHILLING_MILLI_C / 1000.0, TICK);
    boolean counts = room.equals(BenchmarkShed.STORAGE) || CURE.equals(demand.range());
    if (demand.range() != null && counts) {
      score.count(truth, demand.range(), TICK);
    }
  }

  /** Carries the season's fruit in, and over into the store, as its days come. */
  static final class Loads {
    private final double massKg;
    private int arrived;
    private int stored;

    Loads(double seasonKg) {
      massKg = seasonKg / ARRIVALS.length;
    }

    void at(double day, Consumer<FruitLoad> carryIn, Consumer<String> carryOver, double outdoorC) {
      if (arrived < ARRIVALS.length && day >= ARRIVALS[arrived]) {
        arrived++;
        carryIn.accept(FruitLoad.winterSquash("L" + arrived, massKg, outdoorC));
      }
      if (stored < arrived && day >= ARRIVALS[stored] + CURE_DAYS + RAMP_DAYS) {
        stored++;
        carryOver.accept("L" + stored);
      }
    }
  }

  /** Returns the range of an ideal ramp: evenly from the middle of one range to the other's. */
  static @Nullable Range ramped(RoomDemand demand, double day) {
    Range range = demand.range();
    if (range == null || demand.slideMilliCPerDay() == 0) {
      return range;
    }
    double arrival = day >= ARRIVALS[1] ? ARRIVALS[1] : ARRIVALS[0];
    double left = RAMP_DAYS - (day - arrival - CURE_DAYS);
    int shift = (int) Math.round(Math.max(0, left * demand.slideMilliCPerDay()));
    Limits wanted = range.temperature();
    return new Range(new Limits(wanted.low() + shift, wanted.high() + shift), range.humidity());
  }

  static double day(Instant at) {
    return Duration.between(START, at).toSeconds() / 86_400.0;
  }

  /** Runs the season and returns what became of each room. */
  Map<String, Result> run(Controller controller, long seed) {
    try {
      return live(controller, seed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Map<String, Result> live(Controller controller, long seed) throws IOException {
    ShedPlan plan = withBiasedProbes(plan(), new SplittableRandom(seed));
    Time.Stepped time = new Time.Stepped(START);
    ShedModel model = new ShedModel(plan, weather.at(START.getEpochSecond()).temperatureC(), 65);
    SimulatedShed shed =
        new SimulatedShed(model, weather, seed, () -> time.now().at().toEpochMilli());
    Map<Room, List<Watched>> rooms = new LinkedHashMap<>();
    Map<String, RoomScore> scores = new LinkedHashMap<>();
    for (RoomPlan room : plan.rooms()) {
      rooms.put(
          room(room, plan.relays()),
          List.of(new Watched(shed.probe(room.name() + "-air"), ProbePlace.AIR)));
      scores.put(room.name(), new RoomScore());
    }
    List<Watched> outdoors = List.of(new Watched(shed.probe("outdoor"), ProbePlace.OUTDOOR));
    new SeasonLoop(shed, time, TICK, rooms, outdoors, controller)
        .run(Duration.ofDays(DAYS), course(shed, scores), () -> {});
    Map<String, Result> results = new LinkedHashMap<>();
    for (Room room : rooms.keySet()) {
      Map<OutputKind, OutputMeter> meters = new EnumMap<>(OutputKind.class);
      for (Output output : room.outputs().values()) {
        meters.put(output.kind(), shed.meter(output.name()));
      }
      results.put(
          room.name(),
          new Result(scores.get(room.name()), meters, heaterContact == Contact.SOLID_STATE));
    }
    return results;
  }

  private SeasonLoop.Course course(SimulatedShed shed, Map<String, RoomScore> scores) {
    Loads loads = new Loads(built.fruitKg());
    return new SeasonLoop.Course() {
      @Override
      public void dawns(Instant at) {
        loads.at(
            day(at),
            load -> shed.load(BenchmarkShed.CURING, load),
            code -> shed.move(code, BenchmarkShed.CURING, BenchmarkShed.STORAGE),
            shed.outdoor().temperatureC());
      }

      @Override
      public RoomDemand demand(Room room, Instant at) {
        return BenchmarkSeason.demand(room.name(), day(at));
      }

      @Override
      public void sees(
          Room room, RoomDemand demand, RoomTruth truth, Picture picture, Duration tick) {
        score(scores.get(room.name()), room.name(), demand, truth);
      }
    };
  }

  private static ShedPlan withBiasedProbes(ShedPlan plan, SplittableRandom random) {
    List<ProbePlan> probes = new ArrayList<>();
    for (RoomPlan room : plan.rooms()) {
      ProbeErrors biased =
          ProbeErrors.USUAL.withBias(random.nextDouble(-0.2, 0.2), random.nextDouble(-2, 2));
      probes.add(
          ProbePlan.of(room.name() + "-air", room.name(), rindward.hardware.shed.ProbePlace.AIR)
              .withErrors(biased));
    }
    probes.add(
        ProbePlan.of("outdoor", BenchmarkShed.CURING, rindward.hardware.shed.ProbePlace.OUTDOOR));
    return new ShedPlan(plan.rooms(), plan.partitionWPerK(), probes, plan.relays());
  }

  private Room room(RoomPlan plan, List<RelayPlan> relays) {
    boolean cures = plan.name().equals(BenchmarkShed.CURING);
    Map<OutputKind, Output> outputs = new EnumMap<>(OutputKind.class);
    for (RelayPlan relay : relays) {
      if (relay.room().equals(plan.name())) {
        outputs.put(relay.kind(), output(relay, plan.equipment()));
      }
    }
    return new Room(
        plan.name(),
        cures ? RoomPurpose.CURING : RoomPurpose.STORAGE,
        cures ? CURE : KEEP,
        outputs,
        new Accuracy(200, 2_000),
        (int) Math.round(plan.volumeM3() * 1000),
        0,
        false);
  }

  private Output output(RelayPlan relay, Equipment equipment) {
    boolean heats = relay.kind() == OutputKind.HEATER;
    boolean isDosed = heats && heaterContact == Contact.SOLID_STATE;
    Duration minimum =
        isDosed ? Duration.ZERO : heats ? Duration.ofSeconds(20) : Duration.ofMinutes(1);
    boolean airs = relay.kind() == OutputKind.EXHAUST;
    return new Output(
        relay.name(),
        relay.kind(),
        isDosed ? Contact.SOLID_STATE : Contact.RELAY,
        minimum,
        minimum,
        0,
        airs ? (int) Math.round(equipment.exhaustM3PerS() * 1000) : 0);
  }
}
