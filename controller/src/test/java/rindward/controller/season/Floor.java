package rindward.controller.season;

import java.time.Duration;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Range;
import rindward.controller.room.RoomDemand;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.FruitLot;
import rindward.hardware.shed.OutdoorAir;
import rindward.hardware.shed.OutputMeter;
import rindward.hardware.shed.RoomInputs;
import rindward.hardware.shed.RoomModel;
import rindward.hardware.shed.RoomTruth;
import rindward.hardware.shed.ShedModel;
import rindward.hardware.shed.ShedPlan;

/**
 * What no controller can do much better: every output gives any share of its power and follows the
 * true air and not a probe, and heat only keeps the lower edge plus half a kelvin. The fan runs as
 * much as it did under the controller that is compared with, and its heat counts. It does not look
 * ahead and does not warm damp air to dry it, so a controller that does may be longer in range.
 */
final class Floor {
  private static final double ABOVE_EDGE_K = 0.5;
  private static final double INSIDE_PCT = 1.5;
  private static final double FRESH_SHARE = 480.0 / 86_400;
  private static final double SECONDS = BenchmarkSeason.TICK.toSeconds();

  private final BenchmarkSeason season;

  Floor(BenchmarkSeason season) {
    this.season = season;
  }

  /** Runs the season; {@code fanShare} is how much of the time the fan of each room runs. */
  Map<String, BenchmarkSeason.Result> run(Map<String, Double> fanShare) {
    ShedPlan plan = season.plan();
    long start = BenchmarkSeason.START.getEpochSecond();
    ShedModel model = new ShedModel(plan, season.weather().at(start).temperatureC(), 65);
    Map<String, RoomScore> scores = new LinkedHashMap<>();
    Map<String, double[]> kept = new LinkedHashMap<>();
    plan.rooms().forEach(r -> scores.put(r.name(), new RoomScore()));
    plan.rooms().forEach(r -> kept.put(r.name(), new double[1]));
    BenchmarkSeason.Loads loads = new BenchmarkSeason.Loads(season.built().fruitKg());
    long end = Duration.ofDays(BenchmarkSeason.DAYS).toSeconds();
    for (long t = 0; t < end; t += (long) SECONDS) {
      double day = t / 86_400.0;
      OutdoorAir outdoor = season.weather().at(start + t);
      RoomModel curing = model.room(BenchmarkShed.CURING);
      loads.at(
          day,
          curing::load,
          code -> model.room(BenchmarkShed.STORAGE).load(curing.remove(code)),
          outdoor.temperatureC());
      for (Map.Entry<String, RoomScore> score : scores.entrySet()) {
        String name = score.getKey();
        RoomModel room = model.room(name);
        RoomDemand demand = BenchmarkSeason.demand(name, day);
        BenchmarkSeason.score(score.getValue(), name, demand, truth(room));
        Range range = BenchmarkSeason.ramped(demand, day);
        give(
            model.inputs(name),
            room,
            range,
            outdoor,
            kept.get(name),
            fanShare.getOrDefault(name, 0.0));
      }
      model.step(outdoor, SECONDS);
    }
    Map<String, BenchmarkSeason.Result> results = new LinkedHashMap<>();
    scores.forEach(
        (name, score) -> {
          Map<OutputKind, OutputMeter> meters = new EnumMap<>(OutputKind.class);
          for (OutputKind kind : OutputKind.values()) {
            meters.put(kind, new OutputMeter(0, 0, model.room(name).kWh(kind)));
          }
          results.put(name, new BenchmarkSeason.Result(score, meters, true));
        });
    return results;
  }

  private void give(
      RoomInputs on,
      RoomModel room,
      @Nullable Range range,
      OutdoorAir outdoor,
      double[] kept,
      double fan) {
    for (OutputKind kind : OutputKind.values()) {
      on.set(kind, 0);
    }
    if (range == null) {
      return;
    }
    double airC = room.airC();
    double pct = room.relativeHumidityPct();
    double lowC = range.temperature().low() / 1000.0;
    double coldK = lowC + ABOVE_EDGE_K - airC;
    kept[0] = share(kept[0] + coldK * 0.002);
    double dry = range.humidity().low() / 1000.0 + INSIDE_PCT - pct;
    double damp = pct - (range.humidity().high() / 1000.0 - INSIDE_PCT);
    double warm = airC - (range.temperature().high() / 1000.0 - ABOVE_EDGE_K);
    double fruitC = truth(room).coldestFruitC();
    boolean wets = !Double.isNaN(fruitC) && room.dewPointC() > fruitC - 1;
    boolean isDrier = outdoor.vapourPressurePa() < room.vapourPressurePa() - 50;
    double air = outdoor.temperatureC() < airC - 0.5 ? share(2 * warm) : 0;
    if (isDrier && airC > lowC + 0.2) {
      air = Math.max(air, share(0.3 * damp));
    }
    on.set(OutputKind.HEATER, share(kept[0] + 0.2 * coldK));
    on.set(OutputKind.HUMIDIFIER, wets ? 0 : share(0.5 * dry));
    on.set(OutputKind.EXHAUST, Math.max(air, FRESH_SHARE));
    on.set(OutputKind.CIRCULATION, fan);
    on.set(OutputKind.DEHUMIDIFIER, season.hasDehumidifier() && !isDrier ? share(0.3 * damp) : 0);
  }

  private static RoomTruth truth(RoomModel room) {
    double fruitC = Double.NaN;
    boolean wet = false;
    for (FruitLot lot : room.lots()) {
      fruitC = Double.isNaN(fruitC) ? lot.surfaceC() : Math.min(fruitC, lot.surfaceC());
      wet |= lot.isWet();
    }
    return new RoomTruth(
        room.airC(), room.relativeHumidityPct(), room.dewPointC(), fruitC, fruitC, 0, wet, 0);
  }

  private static double share(double value) {
    return Math.min(1, Math.max(0, value));
  }
}
