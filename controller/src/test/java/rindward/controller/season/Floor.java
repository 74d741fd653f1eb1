package rindward.controller.season;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import rindward.controller.crop.Range;
import rindward.controller.room.Order;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.OutdoorAir;
import rindward.hardware.shed.RoomInputs;
import rindward.hardware.shed.RoomModel;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;
import rindward.hardware.shed.Weather;

/**
 * What no controller can do much better: every output gives any share of its power, follows the
 * true air and not a probe, and heat only keeps the lower edge plus half a kelvin. The fan runs as
 * much as it did under the controller that is compared with, and its heat counts.
 */
final class Floor {
  private static final double ABOVE_EDGE_K = 0.5;
  private static final double INSIDE_PCT = 1.5;
  private static final double SECONDS = 10;

  private final BenchmarkShed built;
  private final Weather weather;
  private final boolean hasDehumidifier;

  Floor(BenchmarkShed built, Weather weather, boolean hasDehumidifier) {
    this.built = built;
    this.weather = weather;
    this.hasDehumidifier = hasDehumidifier;
  }

  /** Runs the season; {@code fanShare} is how much of the time the fan of each room runs. */
  Map<String, SeasonScore> run(Map<String, Double> fanShare) {
    ShedPlan plan = BenchmarkSeason.plan(built, hasDehumidifier);
    long start = BenchmarkSeason.START.getEpochSecond();
    ShedModel model = new ShedModel(plan, weather.at(start).temperatureC(), 65);
    Map<String, SeasonScore> scores = new LinkedHashMap<>();
    Map<String, double[]> base = new LinkedHashMap<>();
    plan.rooms()
        .forEach(
            r -> {
              scores.put(r.name(), new SeasonScore());
              base.put(r.name(), new double[3]);
            });
    BenchmarkSeason.Loads loads = new BenchmarkSeason.Loads(built.fruitKg());
    for (long t = 0; t < BenchmarkSeason.DAYS * 86_400L; t += (long) SECONDS) {
      double day = t / 86_400.0;
      OutdoorAir outdoor = weather.at(start + t);
      loads.at(
          day,
          load -> model.room(BenchmarkShed.CURING).load(load),
          code ->
              model.room(BenchmarkShed.STORAGE).load(model.room(BenchmarkShed.CURING).remove(code)),
          outdoor.temperatureC());
      for (String name : scores.keySet()) {
        Order order = BenchmarkSeason.order(name, day);
        RoomModel room = model.room(name);
        SeasonScore score = Objects.requireNonNull(scores.get(name));
        double hours = SECONDS / 3600;
        score.countHarm(BenchmarkSeason.truth(room), hours);
        if (BenchmarkSeason.isScored(name, order)) {
          score.count(BenchmarkSeason.truth(room), Objects.requireNonNull(order.range()), hours);
        }
        Range range = BenchmarkSeason.rampedRange(name, order, day);
        give(
            model.inputs(name),
            room,
            range,
            outdoor,
            Objects.requireNonNull(base.get(name)),
            fanShare.getOrDefault(name, 0.0));
      }
      model.step(outdoor, SECONDS);
    }
    scores.forEach(
        (name, score) -> {
          for (OutputKind kind : OutputKind.values()) {
            score.kWh.put(kind, model.room(name).kWh(kind));
          }
        });
    return scores;
  }

  private void give(
      RoomInputs on,
      RoomModel room,
      @org.jspecify.annotations.Nullable Range range,
      OutdoorAir outdoor,
      double[] base,
      double fan) {
    if (range == null) {
      for (OutputKind kind : OutputKind.values()) {
        on.set(kind, 0);
      }
      return;
    }
    double lowC = range.temperature().low() / 1000.0;
    double highC = range.temperature().high() / 1000.0;
    double lowPct = range.humidity().low() / 1000.0;
    double highPct = range.humidity().high() / 1000.0;
    double airC = room.airC();
    double pct = room.relativeHumidityPct();
    double cold = lowC + ABOVE_EDGE_K - airC;
    base[0] = clamp(base[0] + cold * 0.002);
    double heat = clamp(base[0] + cold * 0.2);
    double dry = lowPct + INSIDE_PCT - pct;
    double fruitC = BenchmarkSeason.truth(room).coldestFruitC();
    boolean wets = !Double.isNaN(fruitC) && room.dewPointC() > fruitC - 1;
    double humid = wets ? 0 : clamp(dry * 0.5);
    double vent = clamp((airC - (highC - ABOVE_EDGE_K)) * 2);
    boolean isDrier = outdoor.vapourPressurePa() < room.vapourPressurePa() - 50;
    double damp = clamp((pct - (highPct - INSIDE_PCT)) * 0.3);
    double air = outdoor.temperatureC() < airC - 0.5 ? vent : 0;
    if (isDrier && airC > lowC + 0.2) {
      air = Math.max(air, damp);
    }
    on.set(OutputKind.HEATER, heat);
    on.set(OutputKind.HUMIDIFIER, humid);
    on.set(OutputKind.EXHAUST, Math.max(air, 480.0 / 86_400));
    on.set(OutputKind.CIRCULATION, fan);
    on.set(OutputKind.DEHUMIDIFIER, hasDehumidifier && !isDrier ? damp : 0);
  }

  private static double clamp(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
