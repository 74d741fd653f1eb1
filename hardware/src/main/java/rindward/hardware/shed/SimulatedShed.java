package rindward.hardware.shed;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import rindward.hardware.Board;
import rindward.hardware.OutputKind;
import rindward.hardware.Probe;
import rindward.hardware.Reading;
import rindward.hardware.Relay;

/**
 * A board whose probes and relays hang in a simulated shed. Time is handed in: every call first
 * lets the shed live up to the present moment in steps of at most 10 s. After a pause longer than
 * {@link #LONGEST_PAUSE_SECONDS} (a laptop that slept) only that much is lived through and the rest
 * is skipped; time that goes backwards is ignored.
 *
 * <p>Thread-safe: every method holds the shed's lock, since each bus is read by its own thread.
 */
public final class SimulatedShed implements Board {
  /** The longest pause that is caught up with in full: a week. */
  public static final long LONGEST_PAUSE_SECONDS = 7 * 86400;

  private static final long LONGEST_STEP_MILLIS = 10_000;

  private final ShedPlan plan;
  private final ShedModel model;
  private final Weather weather;
  private final LongSupplier epochMillis;
  private final ProbeTruth truth;
  private final Faults faults = new Faults();
  private final Map<String, SimulatedProbe> probes = new LinkedHashMap<>();
  private final Map<String, SimulatedRelay> relays = new LinkedHashMap<>();
  private long nowMillis;
  private OutdoorAir outdoor;

  /**
   * Opens a shed, every output off.
   *
   * @param model the rooms, and the fruit already in them; the shed takes it over
   * @param seed of the probes' noise
   * @param epochMillis present moment in UTC; asked at every call
   */
  public SimulatedShed(ShedModel model, Weather weather, long seed, LongSupplier epochMillis) {
    this.plan = model.plan();
    this.model = model;
    this.weather = weather;
    this.epochMillis = epochMillis;
    truth = new ProbeTruth(model);
    long next = seed;
    for (ProbePlan probe : plan.probes()) {
      probes.put(probe.name(), new SimulatedProbe(this, probe, next++));
    }
    for (RelayPlan relay : plan.relays()) {
      relays.put(relay.name(), new SimulatedRelay(this, relay));
    }
    nowMillis = epochMillis.getAsLong();
    outdoor = weather.at(Math.floorDiv(nowMillis, 1000));
    senseAll(0);
  }

  @Override
  public synchronized Probe probe(String name) throws IOException {
    return named("probe", name, probes);
  }

  @Override
  public synchronized Relay relay(String name) throws IOException {
    return named("relay", name, relays);
  }

  /** Switches every relay off. Welded contacts stay closed, as they would. */
  @Override
  public synchronized void close() {
    catchUp();
    for (SimulatedRelay relay : relays.values()) {
      boolean unused = relay.command(false);
    }
    settle();
  }

  /** Lets the shed live up to the present moment. */
  public synchronized void catchUp() {
    long target = epochMillis.getAsLong();
    if (target - nowMillis > LONGEST_PAUSE_SECONDS * 1000) {
      nowMillis = target - LONGEST_PAUSE_SECONDS * 1000;
    }
    while (nowMillis < target) {
      long stepMillis = Math.min(LONGEST_STEP_MILLIS, target - nowMillis);
      outdoor = weather.at(Math.floorDiv(nowMillis + stepMillis / 2, 1000));
      double dtSeconds = stepMillis / 1000.0;
      model.step(outdoor, dtSeconds);
      nowMillis += stepMillis;
      senseAll(dtSeconds);
      relays.values().forEach(relay -> relay.pass(dtSeconds));
    }
  }

  /**
   * Breaks something.
   *
   * @throws IllegalArgumentException when there is nothing of that name to break
   */
  public synchronized void inject(ShedFault fault) {
    checkTarget(fault);
    catchUp();
    faults.add(fault);
    settle();
  }

  /** Mends it again. */
  public synchronized void clear(ShedFault fault) {
    catchUp();
    faults.remove(fault);
    settle();
  }

  /** Mends everything. */
  public synchronized void clearFaults() {
    catchUp();
    faults.clear();
    settle();
  }

  /** Returns what is broken now. */
  public synchronized Set<ShedFault> faults() {
    return faults.active();
  }

  /** Carries fruit into a room. */
  public synchronized void load(String room, FruitLoad load) {
    catchUp();
    model.room(room).load(load);
  }

  /** Carries a lot out of a room and returns it as it is now. */
  public synchronized FruitLoad remove(String room, String code) {
    catchUp();
    return model.room(room).remove(code);
  }

  /** Carries a lot from one room to another; it takes its temperature and wetness along. */
  public synchronized void move(String code, String from, String to) {
    catchUp();
    RoomModel destination = model.room(to);
    destination.load(model.room(from).remove(code));
  }

  /** Returns what a room is really like. */
  public synchronized RoomTruth truth(String room) {
    catchUp();
    return RoomTruth.of(model.room(room));
  }

  /** Returns what a lot is really like. */
  public synchronized FruitTruth fruit(String room, String code) {
    catchUp();
    return FruitTruth.of(model.room(room).lot(code));
  }

  /** Returns the outdoor air. */
  public synchronized OutdoorAir outdoor() {
    catchUp();
    return outdoor;
  }

  /** Returns the account of heat of one room, in J. */
  public synchronized Balance heatBalance(String room) {
    return model.room(room).heatBalance();
  }

  /** Returns the account of water of one room, in kg. */
  public synchronized Balance waterBalance(String room) {
    return model.room(room).waterBalance();
  }

  /**
   * Returns what one relay has done.
   *
   * @throws IOException when there is none of that name
   */
  public synchronized OutputMeter meter(String relay) throws IOException {
    catchUp();
    SimulatedRelay found = named("relay", relay, relays);
    return found.meter(model.room(found.plan.room()).kWh(found.plan.kind()));
  }

  synchronized Reading read(SimulatedProbe probe) throws IOException {
    catchUp();
    SimulatedProbe sensing = named("probe", faults.standIn(probe.name()), probes);
    boolean heaterOn = model.inputs(sensing.plan.room()).duty(OutputKind.HEATER) > 0;
    return probe.read(sensing.sensor, faults, outdoor.globalHorizontalWPerM2(), heaterOn);
  }

  synchronized void command(SimulatedRelay relay, boolean on) throws IOException {
    catchUp();
    if (faults.has(ShedFault.Kind.BOARD_LOST, "")
        || faults.has(ShedFault.Kind.RELAY_LOST, relay.name())) {
      throw new IOException(
          "relay " + relay.name() + " was not switched: its board does not answer");
    }
    if (relay.command(on)) {
      settle();
    }
  }

  private void checkTarget(ShedFault fault) {
    Set<String> known =
        switch (fault.kind().hits()) {
          case PROBE -> probes.keySet();
          case RELAY -> relays.keySet();
          case ROOM -> rooms();
          case BOARD -> Set.of("");
        };
    boolean swapped = fault.kind() == ShedFault.Kind.PROBES_SWAPPED;
    for (String name : swapped ? List.of(fault.target(), fault.other()) : List.of(fault.target())) {
      if (!known.contains(name)) {
        throw new IllegalArgumentException(
            "target of " + fault.kind() + " was '" + name + "' but it must be one of " + known);
      }
    }
  }

  private Set<String> rooms() {
    return plan.rooms().stream().map(RoomPlan::name).collect(Collectors.toSet());
  }

  private void settle() {
    for (SimulatedRelay relay : relays.values()) {
      model.inputs(relay.plan.room()).set(relay.plan.kind(), 0);
    }
    for (SimulatedRelay relay : relays.values()) {
      relay.settle(faults);
      if (relay.isOn()) {
        model.inputs(relay.plan.room()).set(relay.plan.kind(), 1);
      }
    }
    for (RoomPlan room : plan.rooms()) {
      model.inputs(room.name()).openDoor(faults.amount(ShedFault.Kind.DOOR_OPEN, room.name()));
    }
  }

  private void senseAll(double dtSeconds) {
    for (SimulatedProbe probe : probes.values()) {
      truth.look(probe.plan, outdoor);
      probe.sensor.follow(truth.temperatureC(), truth.humidityPct(), dtSeconds);
    }
  }

  private static <T> T named(String what, String name, Map<String, T> all) throws IOException {
    T found = all.get(name);
    if (found == null) {
      throw new IOException(
          what + " was '" + name + "' but it must be one of " + String.join(", ", all.keySet()));
    }
    return found;
  }
}
