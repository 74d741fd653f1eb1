package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.hardware.OutputKind;

/**
 * What one decision hands to the next. Not kept over a restart: then every minimum off time starts
 * anew and the room is learned again within hours.
 *
 * @param outputs since when each output has been as it is
 * @param startedNanos when the controller started
 * @param nanos when the last decision was taken
 * @param air how the room's air has moved; null before the first good picture
 * @param outdoor how it has been outdoors
 * @param learned what the room has taught
 * @param heatedNanos when the heater last ran; the start if never
 * @param freshDue air the room is owed, in volumes of its own
 * @param slideC middle of the temperature range that is controlled to; NaN before the first
 * @param share how a solid-state heater is dosed
 * @param duty how much the heater has run of late
 * @param heatFailed whether the heater was last stopped because it had no effect
 * @param suspicion whether the room is heated though its heater is commanded off
 */
public record Memory(
    Map<OutputKind, OutputState> outputs,
    long startedNanos,
    long nanos,
    @Nullable AirTrend air,
    OutdoorTrend outdoor,
    Learned learned,
    long heatedNanos,
    double freshDue,
    double slideC,
    HeatShare share,
    HeatDuty duty,
    boolean heatFailed,
    HeatSuspicion suspicion) {
  public Memory {
    outputs = Map.copyOf(outputs);
  }

  /** Returns the memory at the start: everything off, and only just. */
  public static Memory atStart(long nowNanos) {
    return new Memory(
        Map.of(),
        nowNanos,
        nowNanos,
        null,
        OutdoorTrend.UNKNOWN,
        Learned.NOTHING,
        nowNanos - NEVER_NANOS,
        0,
        Double.NaN,
        HeatShare.NONE,
        new HeatDuty(0, nowNanos),
        false,
        HeatSuspicion.NONE);
  }

  /** Long enough ago for every rule that asks how long ago something was. */
  private static final long NEVER_NANOS = 86_400_000_000_000L;

  /** Returns an output's state. */
  public OutputState switched(OutputKind kind) {
    OutputState switched = outputs.get(kind);
    return switched == null ? new OutputState(false, startedNanos, Double.NaN, Double.NaN) : switched;
  }

  /** Returns the memory with new views of the air, for the rules to look at. */
  Memory seeing(
      @Nullable AirTrend nextAir,
      OutdoorTrend nextOutdoor,
      double nextSlideC,
      HeatSuspicion nextSuspicion) {
    return new Memory(
        outputs,
        startedNanos,
        nanos,
        nextAir,
        nextOutdoor,
        learned,
        heatedNanos,
        freshDue,
        nextSlideC,
        share,
        duty,
        heatFailed,
        nextSuspicion);
  }

  /** Returns the memory with the share of heat that this tick gives. */
  Memory sharing(HeatShare next) {
    return new Memory(
        outputs,
        startedNanos,
        nanos,
        air,
        outdoor,
        learned,
        heatedNanos,
        freshDue,
        slideC,
        next,
        duty,
        heatFailed,
        suspicion);
  }

  /** Returns the memory after a decision. */
  Memory after(
      Map<OutputKind, Ruling> rulings,
      Learned nextLearned,
      double nextFreshDue,
      HeatDuty nextDuty,
      long nowNanos) {
    boolean changed = false;
    for (Map.Entry<OutputKind, Ruling> ruling : rulings.entrySet()) {
      changed |= switched(ruling.getKey()).on() != ruling.getValue().on();
    }
    Ruling heater = rulings.get(OutputKind.HEATER);
    boolean heats = heater != null && heater.on();
    boolean fails = heater != null && heater.reason().because() == Because.HEAT_WITHOUT_EFFECT;
    return new Memory(
        changed || outputs.isEmpty() ? switched(rulings, nowNanos) : outputs,
        startedNanos,
        nowNanos,
        air,
        outdoor,
        nextLearned,
        heats ? nowNanos : heatedNanos,
        nextFreshDue,
        slideC,
        share,
        nextDuty,
        fails || (heatFailed && !heats),
        suspicion);
  }

  private Map<OutputKind, OutputState> switched(Map<OutputKind, Ruling> rulings, long nowNanos) {
    double airC = air == null ? Double.NaN : air.airC();
    double saidC = air == null ? Double.NaN : air.followerC();
    Map<OutputKind, OutputState> next = new EnumMap<>(OutputKind.class);
    rulings.forEach(
        (kind, ruling) -> {
          OutputState before = switched(kind);
          next.put(
              kind,
              before.on() == ruling.on()
                  ? before
                  : new OutputState(ruling.on(), nowNanos, airC, saidC));
        });
    return next;
  }
}
