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
import rindward.controller.control.Decision;
import rindward.controller.control.Memory;
import rindward.controller.control.Tick;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.Order;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Purpose;
import rindward.controller.room.Room;
import rindward.controller.room.Stock;
import rindward.hardware.OutputKind;
import rindward.hardware.Probe;
import rindward.hardware.Relay;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.Equipment;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.OutputMeter;
import rindward.hardware.shed.ProbeErrors;
import rindward.hardware.shed.ProbePlan;
import rindward.hardware.shed.RelayPlan;
import rindward.hardware.shed.RoomModel;
import rindward.hardware.shed.RoomPlan;
import rindward.hardware.shed.RoomTruth;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.shed.Weather;

/**
 * One season in the benchmark shed under one controller: cures from 20 September and 5 October, 10
 * days each and a ramp of 3, the store filling as they finish, 181 days in all.
 */
final class BenchmarkSeason {
  static final Instant START = Instant.parse("2023-09-20T06:00:00Z");
  static final int DAYS = 181;
  static final Range CURE = new Range(new Limits(26_000, 29_000), new Limits(75_000, 85_000));
  static final Range KEEP = new Range(new Limits(10_000, 15_000), new Limits(50_000, 70_000));
  private static final int TICK_SECONDS = 10;
  private static final double CURE_DAYS = 10;
  private static final double RAMP_DAYS = 3;
  private static final double[] ARRIVALS = {0, 15};

  private final BenchmarkShed built;
  private final Weather weather;
  private final Contact heaterContact;
  private final boolean hasDehumidifier;

  BenchmarkSeason(
      BenchmarkShed built, Weather weather, Contact heaterContact, boolean hasDehumidifier) {
    this.built = built;
    this.weather = weather;
    this.heaterContact = heaterContact;
    this.hasDehumidifier = hasDehumidifier;
  }

  static ShedPlan plan(BenchmarkShed built, boolean hasDehumidifier) {
    ShedPlan plan = built.plan();
    if (!hasDehumidifier) {
      return plan;
    }
    List<RoomPlan> rooms = new ArrayList<>();
    for (RoomPlan room : plan.rooms()) {
      Equipment with = room.equipment().withDehumidifier(0.3, 200);
      rooms.add(room.withEquipment(with));
    }
    return ShedPlan.furnished(rooms, plan.partitionWPerK());
  }

  /** What a room is for at an hour of the season. */
  static Order order(String room, double day) {
    if (room.equals(BenchmarkShed.CURING)) {
      for (double arrival : ARRIVALS) {
        Instant came = START.plusSeconds((long) (arrival * 86_400));
        if (day >= arrival && day < arrival + CURE_DAYS) {
          return new Order(CURE, 0, new Stock(10_000, came), List.of());
        }
        if (day >= arrival + CURE_DAYS && day < arrival + CURE_DAYS + RAMP_DAYS) {
          return new Order(KEEP, 5_000, new Stock(10_000, came), List.of());
        }
      }
      return new Order(null, 0, Stock.UNTOLD, List.of());
    }
    for (int i = ARRIVALS.length - 1; i >= 0; i--) {
      double filled = ARRIVALS[i] + CURE_DAYS + RAMP_DAYS;
      if (day >= filled) {
        return new Order(KEEP, 0, new Stock(10_000, null), List.of());
      }
    }
    return new Order(null, 0, Stock.UNTOLD, List.of());
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

  /** Returns the range of an ideal ramp: down in equal steps from the curing to the storing one. */
  static @Nullable Range rampedRange(String room, Order order, double day) {
    Range range = order.range();
    if (range == null || order.slideMilliCPerDay() == 0) {
      return range;
    }
    for (double arrival : ARRIVALS) {
      double gone = day - arrival - CURE_DAYS;
      if (gone >= 0 && gone < RAMP_DAYS) {
        int shift =
            (int)
                Math.max(
                    0,
                    CURE.temperature().middle()
                        - KEEP.temperature().middle()
                        - gone * order.slideMilliCPerDay());
        return new Range(
            new Limits(range.temperature().low() + shift, range.temperature().high() + shift),
            range.humidity());
      }
    }
    return range;
  }

  /** Returns what a room of a bare model is really like. */
  static RoomTruth truth(RoomModel room) {
    double fruitC = Double.NaN;
    boolean wet = false;
    for (var lot : room.lots()) {
      fruitC = Double.isNaN(fruitC) ? lot.surfaceC() : Math.min(fruitC, lot.surfaceC());
      wet |= lot.isWet();
    }
    return new RoomTruth(
        room.airC(), room.relativeHumidityPct(), room.dewPointC(), fruitC, fruitC, 0, wet, 0);
  }

  static boolean isScored(String room, Order order) {
    return order.range() != null
        && (room.equals(BenchmarkShed.STORAGE) || order.range().equals(CURE));
  }

  private static final class Watch {
    final Room room;
    final Probe probe;
    final Map<OutputKind, Relay> relays = new EnumMap<>(OutputKind.class);
    final SeasonScore score = new SeasonScore();
    Memory memory = Memory.atStart(0);

    Watch(Room room, Probe probe) {
      this.room = room;
      this.probe = probe;
    }
  }

  /** Runs the season and returns the score of each room. */
  Map<String, SeasonScore> run(Controller controller, long seed) {
    try {
      return live(controller, seed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Map<String, SeasonScore> live(Controller controller, long seed) throws IOException {
    ShedPlan furnished = plan(built, hasDehumidifier);
    SplittableRandom random = new SplittableRandom(seed);
    List<ProbePlan> probes = new ArrayList<>();
    for (RoomPlan room : furnished.rooms()) {
      probes.add(
          ProbePlan.of(room.name() + "-air", room.name(), rindward.hardware.shed.ProbePlace.AIR)
              .withErrors(
                  ProbeErrors.USUAL.withBias(
                      random.nextDouble(-0.2, 0.2), random.nextDouble(-2, 2))));
    }
    probes.add(
        ProbePlan.of("outdoor", BenchmarkShed.CURING, rindward.hardware.shed.ProbePlace.OUTDOOR));
    ShedPlan plan =
        new ShedPlan(furnished.rooms(), furnished.partitionWPerK(), probes, furnished.relays());
    long[] seconds = {START.getEpochSecond()};
    ShedModel model = new ShedModel(plan, weather.at(seconds[0]).temperatureC(), 65);
    SimulatedShed shed = new SimulatedShed(model, weather, seed, () -> seconds[0] * 1000);
    List<Watch> rooms = new ArrayList<>();
    for (RoomPlan room : furnished.rooms()) {
      rooms.add(watch(shed, room, furnished.relays()));
    }
    Probe outdoor = shed.probe("outdoor");
    Loads loads = new Loads(built.fruitKg());
    for (long t = 0; t < DAYS * 86_400L; t += TICK_SECONDS) {
      double day = t / 86_400.0;
      loads.at(
          day,
          load -> shed.load(BenchmarkShed.CURING, load),
          code -> shed.move(code, BenchmarkShed.CURING, BenchmarkShed.STORAGE),
          shed.outdoor().temperatureC());
      seconds[0] = START.getEpochSecond() + t;
      long nanos = t * 1_000_000_000L;
      Tick now = new Tick(Instant.ofEpochSecond(seconds[0]), nanos);
      Picture outdoors = picture("outdoor", ProbePlace.OUTDOOR, outdoor, nanos);
      for (Watch watch : rooms) {
        String name = watch.room.name();
        Order order = order(name, day);
        RoomTruth truth = shed.truth(name);
        double hours = TICK_SECONDS / 3600.0;
        watch.score.countHarm(truth, hours);
        if (isScored(name, order)) {
          watch.score.count(truth, java.util.Objects.requireNonNull(order.range()), hours);
        }
        Picture picture = picture(name, ProbePlace.AIR, watch.probe, nanos);
        Decision decision =
            controller.decide(watch.memory, watch.room, order, picture, outdoors, now);
        Memory before = watch.memory;
        watch.memory = decision.memory();
        decision
            .rulings()
            .forEach(
                (kind, ruling) -> {
                  if (before.switched(kind).on() != ruling.on()) {
                    set(watch.relays.get(kind), ruling.on());
                  }
                });
      }
    }
    Map<String, SeasonScore> scores = new LinkedHashMap<>();
    for (Watch watch : rooms) {
      for (Map.Entry<OutputKind, Relay> relay : watch.relays.entrySet()) {
        OutputMeter meter = shed.meter(relay.getValue().name());
        watch.score.kWh.put(relay.getKey(), meter.kWh());
        watch.score.hoursOn.put(relay.getKey(), meter.hoursOn());
        watch.score.switchings.put(relay.getKey(), meter.switchings());
      }
      scores.put(watch.room.name(), watch.score);
    }
    return scores;
  }

  private static void set(@Nullable Relay relay, boolean on) {
    try {
      java.util.Objects.requireNonNull(relay).set(on);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Picture picture(String name, ProbePlace place, Probe probe, long nanos)
      throws IOException {
    return Picture.of(List.of(new ProbeReading(name, place, probe.read(), nanos, null)), nanos);
  }

  private Watch watch(SimulatedShed shed, RoomPlan plan, List<RelayPlan> relays)
      throws IOException {
    Map<OutputKind, Output> outputs = new EnumMap<>(OutputKind.class);
    Map<OutputKind, Relay> own = new EnumMap<>(OutputKind.class);
    for (RelayPlan relay : relays) {
      if (relay.room().equals(plan.name())) {
        outputs.put(relay.kind(), output(relay, plan.equipment()));
        own.put(relay.kind(), shed.relay(relay.name()));
      }
    }
    Range range = plan.name().equals(BenchmarkShed.CURING) ? CURE : KEEP;
    Room room =
        new Room(
            plan.name(),
            plan.name().equals(BenchmarkShed.CURING) ? Purpose.CURING : Purpose.STORAGE,
            range,
            outputs,
            new Accuracy(200, 2_000),
            (int) Math.round(plan.volumeM3() * 1000),
            false);
    Watch watch = new Watch(room, shed.probe(plan.name() + "-air"));
    watch.relays.putAll(own);
    return watch;
  }

  private Output output(RelayPlan relay, Equipment equipment) {
    boolean dosed = relay.kind() == OutputKind.HEATER && heaterContact == Contact.SOLID_STATE;
    Duration minimum =
        dosed
            ? Duration.ZERO
            : relay.kind() == OutputKind.HEATER ? Duration.ofSeconds(30) : Duration.ofMinutes(1);
    return new Output(
        relay.name(),
        relay.kind(),
        dosed ? Contact.SOLID_STATE : Contact.RELAY,
        minimum,
        minimum,
        0,
        relay.kind() == OutputKind.EXHAUST
            ? (int) Math.round(equipment.exhaustM3PerS() * 1000)
            : 0);
  }
}
