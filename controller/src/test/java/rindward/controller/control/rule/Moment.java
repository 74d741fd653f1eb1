package rindward.controller.control.rule;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.ControlInput;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.HeatSuspicion;
import rindward.controller.control.HeaterMemory;
import rindward.controller.control.HeaterModulation;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.OutputStates;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.SetpointBand;
import rindward.controller.control.Tick;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.estimate.AirEstimate;
import rindward.controller.estimate.AirTimeConstant;
import rindward.controller.estimate.HeaterDuty;
import rindward.controller.estimate.IdentifiedResponse;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.controller.estimate.OutputState;
import rindward.controller.estimate.RoomEstimate;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Contact;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomPurpose;
import rindward.controller.room.Stock;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * One moment of a store kept at 12-16 C and 50-70 %, put together value by value, so that a rule
 * can be asked alone and at the very edge of what it looks at. Without a word said it is 14 C and
 * 60 % inside, all is off for a day, and nothing is known of outdoors.
 */
final class Moment {
  private static final long SECOND = 1_000_000_000L;
  private static final long NOW = 10_000_000 * SECOND;
  private static final double TICK_SECONDS = 10;
  private static final long DAY_SECONDS = 86_400;
  private static final Range KEEP =
      new Range(new Limits(12_000, 16_000), new Limits(50_000, 70_000));
  static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  private final Map<OutputKind, OutputState> outputs = new EnumMap<>(OutputKind.class);
  private final List<OutputKind> missing = new ArrayList<>();
  private final List<ManualCommand> commands = new ArrayList<>();
  private Contact contact = Contact.RELAY;
  private HeatTrust trust = HeatTrust.USUAL;
  private Accuracy accuracy = Accuracy.EXACT;
  private Stock stock = Stock.UNTOLD;
  private boolean rests;
  private boolean hasReading = true;
  private double airC = 14;
  private double slopeCPerS;
  private double slowC = 14;
  private double fruitC = 14;
  private double coldestC = 14;
  private double warmestC = 14;
  private double vapourPa = 0.6 * SaturationPressure.overIceOrWaterPa(14);
  private long unchangedSeconds;
  private OutdoorEstimate outdoor = OutdoorEstimate.UNKNOWN;
  private IdentifiedResponse learned = IdentifiedResponse.NOTHING;
  private double heatedSecondsAgo = DAY_SECONDS;
  private double sightSecondsAgo;
  private double dutyShare;
  private double freshDue;
  private HeaterModulation share = HeaterModulation.NONE;
  private boolean heatFailed;
  private HeatSuspicion suspicion = HeatSuspicion.NONE;
  private @Nullable SetpointBand target;

  /** The whole room at one temperature, with the humidity it has. */
  Moment air(double temperatureC) {
    double pct = 100 * vapourPa / SaturationPressure.overIceOrWaterPa(airC);
    airC = slowC = fruitC = coldestC = warmestC = temperatureC;
    return humidity(pct);
  }

  Moment changing(double cPerSecond) {
    slopeCPerS = cPerSecond;
    return this;
  }

  Moment lastHour(double temperatureC) {
    slowC = temperatureC;
    return this;
  }

  Moment fruit(double temperatureC) {
    fruitC = temperatureC;
    return this;
  }

  Moment probes(double coldest, double warmest) {
    coldestC = coldest;
    warmestC = warmest;
    return this;
  }

  Moment unchangedFor(long seconds) {
    unchangedSeconds = seconds;
    return this;
  }

  Moment humidity(double pct) {
    vapourPa = pct / 100 * SaturationPressure.overIceOrWaterPa(airC);
    return this;
  }

  Moment vapour(double pa) {
    vapourPa = pa;
    return this;
  }

  Moment withoutReading() {
    hasReading = false;
    return this;
  }

  Moment outdoors(double temperatureC) {
    return outdoors(temperatureC, Double.NaN);
  }

  Moment outdoors(double temperatureC, double holdsPa) {
    return outdoors(temperatureC, holdsPa, temperatureC, temperatureC, temperatureC);
  }

  Moment outdoors(double nowC, double holdsPa, double meanC, double coldest, double warmest) {
    outdoor =
        new OutdoorEstimate(NOW, nowC, holdsPa, meanC, NOW, coldest, warmest, coldest, warmest);
    return this;
  }

  Moment on(OutputKind kind, double secondsAgo) {
    return on(kind, secondsAgo, Double.NaN);
  }

  /** On since then, when the air was that warm. */
  Moment on(OutputKind kind, double secondsAgo, double thenC) {
    return switched(kind, true, secondsAgo, thenC);
  }

  Moment off(OutputKind kind, double secondsAgo, double thenC) {
    return switched(kind, false, secondsAgo, thenC);
  }

  private Moment switched(OutputKind kind, boolean on, double secondsAgo, double thenC) {
    outputs.put(kind, new OutputState(on, before(secondsAgo), thenC, thenC));
    return this;
  }

  Moment without(OutputKind kind) {
    missing.add(kind);
    return this;
  }

  Moment solidState(boolean heatsThisTick) {
    contact = Contact.SOLID_STATE;
    share = new HeaterModulation(0.5, 0, heatsThisTick);
    return this;
  }

  Moment heatedOn(HeatTrust other) {
    trust = other;
    return this;
  }

  Moment accuracy(int temperatureMilliC, int humidityMilliPct) {
    accuracy = new Accuracy(temperatureMilliC, humidityMilliPct);
    return this;
  }

  Moment mindsColdBelow(double temperatureC) {
    stock = new Stock(Thousandths.of(temperatureC), AT);
    return this;
  }

  Moment rests() {
    rests = true;
    return this;
  }

  Moment said(OutputKind kind, boolean on, Instant until) {
    commands.add(new ManualCommand(kind, on, until, "Wren"));
    return this;
  }

  Moment heated(double secondsAgo) {
    heatedSecondsAgo = secondsAgo;
    return this;
  }

  Moment heatFailed() {
    heatFailed = true;
    return this;
  }

  Moment heatSuspected() {
    suspicion = new HeatSuspicion(true, Thousandths.NONE, 0);
    return this;
  }

  /** No probe for so long; before that the heater ran for that share of the time. */
  Moment blindFor(double seconds, double heatedShare) {
    sightSecondsAgo = seconds;
    dutyShare = heatedShare;
    return withoutReading();
  }

  Moment owed(double volumes) {
    freshDue = volumes;
    return this;
  }

  Moment learned(double heaterSwingK, double exhaustShare) {
    learned = new IdentifiedResponse(heaterSwingK, AirTimeConstant.UNKNOWN, exhaustShare, 1, 1);
    return this;
  }

  Moment target(SetpointBand other) {
    target = other;
    return this;
  }

  /** Returns what a rule wants of an output: on or off, in whose name and why; or nothing. */
  String request(Rule rule, OutputKind kind) {
    return request(rule, kind, new OutputRequests());
  }

  /** Returns what is wanted once the rule has spoken after others. */
  String request(Rule rule, OutputKind kind, OutputRequests before) {
    rule.consider(input(), before);
    OutputDecision ruling = before.of(kind);
    return ruling.reason().because() == ReasonCode.NO_WISH
        ? "nothing"
        : (ruling.on() ? "on " : "off ") + ruling.right() + " " + ruling.reason().because();
  }

  ControlInput input() {
    RoomDemand demand = new RoomDemand(rests ? null : KEEP, 0, stock, commands);
    SetpointBand kept =
        target == null
            ? SetpointBand.of(
                KEEP, accuracy, stock, Thousandths.of(learned.heaterSwingK()), Double.NaN)
            : target;
    return new ControlInput(
        memory(), room(), demand, KEEP, kept, picture(), new Tick(AT, NOW), TICK_SECONDS);
  }

  private ControlMemory memory() {
    AirEstimate air =
        hasReading
            ? new AirEstimate(
                NOW, airC, airC, slopeCPerS, slowC, fruitC, airC, airC, vapourPa, stock.newest())
            : null;
    return new ControlMemory(
        new OutputStates(outputs, before(DAY_SECONDS)),
        before(TICK_SECONDS),
        new RoomEstimate(
            air, outdoor, learned, new HeaterDuty(dutyShare, before(sightSecondsAgo)), null),
        new HeaterMemory(before(heatedSecondsAgo), share, heatFailed, suspicion),
        freshDue,
        Double.NaN);
  }

  private Room room() {
    Map<OutputKind, Output> all = new EnumMap<>(OutputKind.class);
    for (OutputKind kind : OutputKind.values()) {
      if (!missing.contains(kind)) {
        Duration minute = Duration.ofMinutes(1);
        all.put(kind, new Output(kind.word(), kind, contact, minute, minute, 0, 0));
      }
    }
    return new Room("store", RoomPurpose.STORAGE, KEEP, all, accuracy, 0, 0, false, trust);
  }

  private Picture picture() {
    if (!hasReading) {
      return Picture.NONE;
    }
    int pct =
        Double.isNaN(vapourPa)
            ? Thousandths.NONE
            : Thousandths.of(100 * vapourPa / SaturationPressure.overIceOrWaterPa(airC));
    return new Picture(
        Thousandths.of(airC),
        Thousandths.of(coldestC),
        Thousandths.of(warmestC),
        pct,
        pct,
        pct,
        Thousandths.NONE,
        0,
        unchangedSeconds,
        List.of());
  }

  private static long before(double secondsAgo) {
    return NOW - Math.round(secondsAgo * SECOND);
  }
}
