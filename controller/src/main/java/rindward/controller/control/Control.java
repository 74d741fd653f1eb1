package rindward.controller.control;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Range;
import rindward.controller.room.Order;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * The decision for one room: the views of the air are brought up to date, the rules wish, the
 * strongest right wins, then the timers, then the proof of moving air. Immutable and pure.
 */
public final class Control implements Controller {
  /** In the order in which they speak; the last ones look at what the others wished. */
  static final List<Rule> RULES =
      List.of(
          new NothingKnown(),
          new BlindFrost(),
          new ByHand(),
          new Frost(),
          new SuspectedHeat(),
          new Overheating(),
          new Chilling(),
          new NoEffect(),
          new Condensation(),
          new Drying(),
          new Heating(),
          new Humidifying(),
          new Cooling(),
          new FreshAir(),
          new Trough(),
          new Circulating());

  private static final double DAY_SECONDS = 86_400;

  /** So long after humidifying, damp air is taken to be one's own doing. */
  private static final double OWN_WATER_SECONDS = 3600;

  /** Fresh air that is owed is not counted further than this many volumes. */
  private static final double MOST_DUE = 2;

  private final List<Rule> rules;

  /** All rules of the house. */
  public Control() {
    this(RULES);
  }

  /** Some of the rules; for trials of what each is worth. */
  Control(List<Rule> rules) {
    this.rules = List.copyOf(rules);
  }

  @Override
  public Decision decide(
      Memory memory, Room room, Order order, Picture picture, Picture outdoors, Tick now) {
    Situation situation = situation(memory, room, order, picture, outdoors, now);
    Wishes wishes = new Wishes();
    for (int i = 0; i < rules.size(); i++) {
      rules.get(i).consider(situation, wishes);
    }
    Map<OutputKind, Ruling> rulings = new EnumMap<>(OutputKind.class);
    for (Output output : room.outputs().values()) {
      Ruling wished = wishes.of(output.kind());
      rulings.put(
          output.kind(),
          room.observeOnly()
              ? new Ruling(false, Right.HARDWARE_LIMIT, Reason.of(Because.OBSERVE_ONLY))
              : MinimumTimes.apply(
                  output, situation.memory().switched(output.kind()), wished, now.nanos()));
    }
    FanProof.apply(room, rulings);
    return new Decision(rulings, after(situation, rulings), Beyond.of(situation));
  }

  private static Situation situation(
      Memory before, Room room, Order order, Picture picture, Picture outdoors, Tick now) {
    double seconds = Math.max(0, (now.nanos() - before.nanos()) / 1e9);
    OutdoorTrend outdoor = OutdoorTrend.next(before.outdoor(), outdoors, now.nanos());
    AirTrend air = AirTrend.next(before.air(), picture, order.stock(), outdoor, now.nanos());
    double slideC = Slide.next(before.slideC(), order, picture, seconds);
    Range range = Slide.range(order.range() == null ? room.range() : order.range(), slideC);
    Target target =
        Target.of(
            range,
            room.accuracy(),
            order.stock(),
            Thousandths.of(before.learned().heaterSwingK()),
            weatherPa(before, air, now));
    HeatSuspicion suspicion =
        room.has(OutputKind.HEATER)
            ? before
                .suspicion()
                .next(
                    before.switched(OutputKind.HEATER),
                    picture.warmestMilliC(),
                    range.temperature().high(),
                    now.nanos())
            : HeatSuspicion.NONE;
    Memory memory = before.seeing(air, outdoor, slideC, suspicion);
    if (air != null && room.has(OutputKind.HEATER)) {
      memory =
          memory.sharing(
              before
                  .share()
                  .next(target.aimC(before.learned().heaterSwingK()) - air.airC(), seconds));
    }
    return new Situation(memory, room, order, range, target, picture, now, seconds);
  }

  /** Returns the vapour that came by itself: what was just humidified is no damp weather. */
  private static double weatherPa(Memory before, @Nullable AirTrend air, Tick now) {
    var humidifier = before.switched(OutputKind.HUMIDIFIER);
    boolean isOwn =
        humidifier.on()
            || (!Double.isNaN(humidifier.airC())
                && (now.nanos() - humidifier.sinceNanos()) / 1e9 < OWN_WATER_SECONDS);
    return air == null || isOwn ? Double.NaN : air.vapourPa();
  }

  private static Memory after(Situation situation, Map<OutputKind, Ruling> rulings) {
    Memory memory = situation.memory();
    Learned learned = memory.learned();
    if (situation.knowsAir()) {
      var heater = memory.switched(OutputKind.HEATER);
      var exhaust = memory.switched(OutputKind.EXHAUST);
      learned =
          learned
              .heating(
                  heater,
                  exhaust,
                  situation.air(),
                  situation.now().nanos(),
                  situation.tickSeconds(),
                  !isOn(rulings, OutputKind.HEATER))
              .exhausting(
                  exhaust,
                  heater,
                  situation.air(),
                  situation.outdoor().nowC(),
                  situation.now().nanos(),
                  situation.tickSeconds(),
                  !isOn(rulings, OutputKind.EXHAUST));
    }
    HeatDuty duty =
        memory
            .duty()
            .next(
                situation.knowsAir(),
                isOn(rulings, OutputKind.HEATER),
                situation.tickSeconds(),
                situation.now().nanos());
    return memory.after(rulings, learned, freshDue(situation), duty, situation.now().nanos());
  }

  private static double freshDue(Situation situation) {
    double due = situation.memory().freshDue() + situation.tickSeconds() / DAY_SECONDS;
    if (situation.isOn(OutputKind.EXHAUST)) {
      due -= situation.tickSeconds() / situation.room().secondsAVolume();
    }
    return Math.min(MOST_DUE, Math.max(0, due));
  }

  private static boolean isOn(Map<OutputKind, Ruling> rulings, OutputKind kind) {
    Ruling ruling = rulings.get(kind);
    return ruling != null && ruling.on();
  }
}
