package rindward.controller.control.rule;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.AirflowInterlock;
import rindward.controller.control.ControlInput;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.HeatSuspicion;
import rindward.controller.control.HeaterMemory;
import rindward.controller.control.MinimumTimes;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Rule;
import rindward.controller.control.SetpointBand;
import rindward.controller.control.SetpointRamp;
import rindward.controller.control.SuspectedHeat;
import rindward.controller.control.Tick;
import rindward.controller.control.UnreachableTarget;
import rindward.controller.crop.Range;
import rindward.controller.estimate.AirEstimate;
import rindward.controller.estimate.HeaterDuty;
import rindward.controller.estimate.IdentifiedResponse;
import rindward.controller.estimate.RoomEstimate;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * The decision for one room: the views of the air are brought up to date, the rules request, the
 * strongest right wins, then the timers, then the proof of moving air. Immutable and pure.
 */
public final class RuleBasedController implements Controller {
  /** In the order in which they speak; the last ones look at what the others requested. */
  static final List<Rule> RULES =
      List.of(
          new NothingKnownRule(),
          new BlindFrostRule(),
          new ManualRule(),
          new FrostRule(),
          new SuspectedHeat(),
          new OverheatingRule(),
          new ChillingRule(),
          new IneffectiveHeaterRule(),
          new CondensationRule(),
          new DryingRule(),
          new HeatingRule(),
          new HumidifyingRule(),
          new CoolingRule(),
          new FreshAirRule(),
          new VentUndershootLimit(),
          new CirculationRule());

  private static final double DAY_SECONDS = 86_400;

  /** So long after humidifying, damp air is taken to be one's own doing. */
  private static final double OWN_WATER_SECONDS = 3600;

  /** Fresh air that is owed is not counted further than this many volumes. */
  private static final double MOST_DUE = 2;

  private final List<Rule> rules;

  /** All rules of the house. */
  public RuleBasedController() {
    this(RULES);
  }

  /** Some of the rules; for trials of what each is worth. */
  RuleBasedController(List<Rule> rules) {
    this.rules = List.copyOf(rules);
  }

  @Override
  public RoomDecision decide(
      ControlMemory memory,
      Room room,
      RoomDemand demand,
      Picture picture,
      Picture outdoors,
      Tick now) {
    ControlInput input = input(memory, room, demand, picture, outdoors, now);
    OutputRequests requests = new OutputRequests();
    for (int i = 0; i < rules.size(); i++) {
      rules.get(i).consider(input, requests);
    }
    Map<OutputKind, OutputDecision> rulings = new EnumMap<>(OutputKind.class);
    for (Output output : room.outputs().values()) {
      OutputDecision requested = requests.of(output.kind());
      rulings.put(
          output.kind(),
          room.observeOnly() || demand.isObserved()
              ? new OutputDecision(
                  false,
                  Precedence.HARDWARE_LIMIT,
                  Reason.of(
                      room.observeOnly() ? ReasonCode.OBSERVE_ONLY : ReasonCode.UNREAD_COMMAND))
              : MinimumTimes.apply(
                  output, input.memory().switched(output.kind()), requested, now.nanos()));
    }
    AirflowInterlock.apply(room, rulings);
    return new RoomDecision(rulings, after(input, rulings), UnreachableTarget.of(input));
  }

  private static ControlInput input(
      ControlMemory before,
      Room room,
      RoomDemand demand,
      Picture picture,
      Picture outdoors,
      Tick now) {
    double seconds = Math.max(0, (now.nanos() - before.nanos()) / 1e9);
    RoomEstimate estimate =
        before.estimate().seeing(picture, outdoors, demand.stock(), now.at(), now.nanos());
    AirEstimate air = estimate.air();
    double swingK = estimate.response().heaterSwingK();
    double slideC = SetpointRamp.next(before.slideC(), demand, picture, seconds);
    Range range =
        SetpointRamp.range(demand.range() == null ? room.range() : demand.range(), slideC);
    SetpointBand target =
        SetpointBand.of(
            range,
            room.accuracy(),
            demand.stock(),
            Thousandths.of(swingK),
            weatherPa(before, air, now));
    HeatSuspicion suspicion =
        room.has(OutputKind.HEATER)
            ? before
                .heater()
                .suspicion()
                .next(
                    before.switched(OutputKind.HEATER),
                    picture.warmestMilliC(),
                    range.temperature().high(),
                    now.nanos())
            : HeatSuspicion.NONE;
    HeaterMemory heater = before.heater().suspecting(suspicion);
    if (air != null && room.has(OutputKind.HEATER)) {
      heater = heater.dosing(heater.modulation().next(target.aimC(swingK) - air.airC(), seconds));
    }
    ControlMemory memory = before.seeing(estimate, heater, slideC);
    return new ControlInput(memory, room, demand, range, target, picture, now, seconds);
  }

  /** Returns the vapour that came by itself: what was just humidified is no damp weather. */
  private static double weatherPa(ControlMemory before, @Nullable AirEstimate air, Tick now) {
    var humidifier = before.switched(OutputKind.HUMIDIFIER);
    boolean isOwn =
        humidifier.on()
            || (!Double.isNaN(humidifier.airC())
                && (now.nanos() - humidifier.sinceNanos()) / 1e9 < OWN_WATER_SECONDS);
    return air == null || isOwn ? Double.NaN : air.vapourPa();
  }

  private static ControlMemory after(ControlInput input, Map<OutputKind, OutputDecision> rulings) {
    ControlMemory memory = input.memory();
    IdentifiedResponse learned = memory.estimate().response();
    if (input.knowsAir()) {
      var heater = memory.switched(OutputKind.HEATER);
      var exhaust = memory.switched(OutputKind.EXHAUST);
      learned =
          learned
              .heating(
                  heater,
                  exhaust,
                  input.air(),
                  input.now().nanos(),
                  input.tickSeconds(),
                  !isOn(rulings, OutputKind.HEATER))
              .exhausting(
                  exhaust,
                  heater,
                  input.air(),
                  input.outdoor().nowC(),
                  input.now().nanos(),
                  input.tickSeconds(),
                  !isOn(rulings, OutputKind.EXHAUST));
    }
    HeaterDuty duty =
        memory
            .estimate()
            .duty()
            .next(
                input.knowsAir(),
                isOn(rulings, OutputKind.HEATER),
                input.tickSeconds(),
                input.now().nanos());
    return memory.after(
        rulings, memory.estimate().taught(learned, duty), freshDue(input), input.now().nanos());
  }

  private static double freshDue(ControlInput input) {
    double due = input.memory().freshDue() + input.tickSeconds() / DAY_SECONDS;
    if (input.isOn(OutputKind.EXHAUST)) {
      due -= input.tickSeconds() / input.room().secondsAVolume();
    }
    return Math.min(MOST_DUE, Math.max(0, due));
  }

  private static boolean isOn(Map<OutputKind, OutputDecision> rulings, OutputKind kind) {
    OutputDecision ruling = rulings.get(kind);
    return ruling != null && ruling.on();
  }
}
