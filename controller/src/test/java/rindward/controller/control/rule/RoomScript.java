package rindward.controller.control.rule;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Reason;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Tick;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomPurpose;
import rindward.controller.room.Stock;
import rindward.hardware.OutputKind;
import rindward.hardware.Reading;

/** A storage room that is told, tick by tick, what its probes say, and tells what it decides. */
final class RoomScript {
  static final Range KEEP = new Range(new Limits(12_000, 16_000), new Limits(50_000, 70_000));
  private static final long TICK = 10;

  private final Controller control = new RuleBasedController();
  private final Room room;
  private RoomDemand demand;
  private List<ProbeReading> probes = List.of();
  private List<ProbeReading> outdoors = List.of();
  private long second = 100_000;
  private ControlMemory memory = ControlMemory.atStart((second - 600) * 1_000_000_000L);
  private Map<OutputKind, OutputDecision> rulings = Map.of();
  private @Nullable Reason beyond;

  private RoomScript(Room room) {
    this.room = room;
    this.demand = RoomDemand.of(room);
  }

  /** A room with every kind of output, contacts spared for a minute, exact probes. */
  static RoomScript room() {
    return new RoomScript(room(OutputKind.values(), false));
  }

  static RoomScript roomWith(OutputKind... kinds) {
    return new RoomScript(room(kinds, false));
  }

  static RoomScript roomNotCommissioned() {
    return new RoomScript(room(OutputKind.values(), true));
  }

  static RoomScript roomHeatedOn(HeatTrust trust) {
    return new RoomScript(room(OutputKind.values(), false).withHeatTrust(trust));
  }

  private static Room room(OutputKind[] kinds, boolean observeOnly) {
    Map<OutputKind, Output> outputs = new java.util.EnumMap<>(OutputKind.class);
    Duration minute = Duration.ofMinutes(1);
    for (OutputKind kind : kinds) {
      outputs.put(
          kind,
          new Output(
              kind.word(),
              kind,
              Contact.RELAY,
              minute,
              kind == OutputKind.COOLER ? Duration.ofMinutes(5) : minute,
              0,
              kind == OutputKind.EXHAUST ? 30 : 0));
    }
    return new Room(
        "store", RoomPurpose.STORAGE, KEEP, outputs, Accuracy.EXACT, 14_400, 0, observeOnly);
  }

  RoomScript ordered(UnaryOperator<RoomDemand> change) {
    demand = change.apply(demand);
    return this;
  }

  RoomScript stockMindsColdBelow(double temperatureC) {
    return ordered(
        o ->
            new RoomDemand(
                o.range(),
                o.slideMilliCPerDay(),
                new Stock((int) (temperatureC * 1000), o.stock().newest()),
                o.commands()));
  }

  /** Says what the only probe shows from now on. */
  RoomScript air(double temperatureC, double humidityPct) {
    probes = List.of(probe("air", ProbePlace.AIR, Reading.of(temperatureC, humidityPct)));
    return this;
  }

  RoomScript airOf(double... temperaturesC) {
    List<ProbeReading> many = new ArrayList<>();
    for (double temperatureC : temperaturesC) {
      many.add(probe("p" + many.size(), ProbePlace.AIR, Reading.of(temperatureC, 60)));
    }
    probes = many;
    return this;
  }

  RoomScript airWithFruit(double temperatureC, double humidityPct, double fruitC) {
    probes =
        List.of(
            probe("air", ProbePlace.AIR, Reading.of(temperatureC, humidityPct)),
            probe("pulp", ProbePlace.PULP, Reading.ofTemperature(fruitC)));
    return this;
  }

  RoomScript airWithoutHumidity(double temperatureC) {
    probes = List.of(probe("air", ProbePlace.AIR, Reading.ofTemperature(temperatureC)));
    return this;
  }

  RoomScript noProbe() {
    probes = List.of();
    return this;
  }

  RoomScript outdoors(double temperatureC, double humidityPct) {
    outdoors = List.of(probe("outdoor", ProbePlace.OUTDOOR, Reading.of(temperatureC, humidityPct)));
    return this;
  }

  /** Lets time pass with everything as it is. */
  RoomScript after(Duration time) {
    for (long i = 0; i < Math.max(1, time.toSeconds() / TICK); i++) {
      second += TICK;
      long nanos = second * 1_000_000_000L;
      RoomDecision decision =
          control.decide(
              memory,
              room,
              demand,
              Picture.of(fresh(probes, nanos), nanos),
              Picture.of(fresh(outdoors, nanos), nanos),
              new Tick(now(), nanos));
      memory = decision.memory();
      rulings = decision.rulings();
      beyond = decision.beyond();
    }
    return this;
  }

  RoomScript tick() {
    return after(Duration.ofSeconds(TICK));
  }

  Instant now() {
    return Instant.ofEpochSecond(second);
  }

  boolean isOn(OutputKind kind) {
    return ruling(kind).on();
  }

  String why(OutputKind kind) {
    return ruling(kind).reason().sentence();
  }

  OutputDecision ruling(OutputKind kind) {
    OutputDecision ruling = rulings.get(kind);
    if (ruling == null) {
      throw new AssertionError("nothing was decided for the " + kind.word());
    }
    return ruling;
  }

  Map<OutputKind, OutputDecision> rulings() {
    return rulings;
  }

  /** Returns what no output of the room can put right; empty if nothing. */
  String beyond() {
    return beyond == null ? "" : beyond.sentence();
  }

  ControlMemory memory() {
    return memory;
  }

  private static ProbeReading probe(String name, ProbePlace place, Reading reading) {
    return new ProbeReading(name, place, reading, 0, null);
  }

  private static List<ProbeReading> fresh(List<ProbeReading> readings, long nanos) {
    return readings.stream()
        .map(r -> new ProbeReading(r.probe(), r.place(), r.reading(), nanos, null))
        .toList();
  }
}
