package rindward.controller.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import rindward.controller.control.Controller;
import rindward.controller.control.ThermostatController;
import rindward.controller.control.rule.Ablations;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.room.Contact;
import rindward.controller.season.BenchmarkSeason.Result;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.BenchmarkShed;
import rindward.hardware.shed.EpwWeather;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.OutputMeter;
import rindward.hardware.shed.Weather;

/**
 * Prints how the control does in the benchmark shed, beside a plain thermostat and humidistat at
 * the middle of the range, the best of a grid of such settings, and the floor that physics leaves.
 * {@code mvn -Pquick,seasons verify}, with {@code -Dweather=FILE.epw} for a real year.
 */
public final class SeasonTable {
  private static final int SEEDS = Integer.getInteger("seeds", 20);
  private static final int FEW = Math.max(1, SEEDS / 6);
  private static final double HOURS = 24.0 * BenchmarkSeason.DAYS;

  private SeasonTable() {}

  /** A controller over some seeds: both rooms of every season. */
  private record Row(String name, List<Map<String, Result>> seasons) {
    double median(ToDoubleFunction<Map<String, Result>> of) {
      double[] sorted = seasons.stream().mapToDouble(of).sorted().toArray();
      int middle = sorted.length / 2;
      return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    double worst(ToDoubleFunction<Map<String, Result>> of) {
      return seasons.stream().mapToDouble(of).max().orElse(Double.NaN);
    }

    double least(ToDoubleFunction<Map<String, Result>> of) {
      return seasons.stream().mapToDouble(of).min().orElse(Double.NaN);
    }
  }

  public static void main(String[] args) throws IOException {
    Path example = Path.of(args[0]);
    boolean hasFile = args.length > 1 && !args[1].isBlank();
    Weather weather = hasFile ? EpwWeather.read(Path.of(args[1])) : GeneratedWeather.temperate(1);
    System.out.printf(
        "Weather: %s. %d seeds, median (worst); %d in the lower tables.%n",
        hasFile ? "file" : "made up", SEEDS, FEW);
    head("Standard shed");
    BenchmarkSeason standard = season(BenchmarkShed.STANDARD, weather, Contact.RELAY, false);
    Row ours = row("ours, relay", standard, new RuleBasedController(), SEEDS);
    print(floor(standard, ours));
    print(row("(a) plain, middle", standard, ThermostatController.USUAL, SEEDS));
    print(best(standard));
    print(ours);
    BenchmarkSeason dosed = season(BenchmarkShed.STANDARD, weather, Contact.SOLID_STATE, false);
    print(row("ours, solid state", dosed, new RuleBasedController(), FEW));
    print(row("without dew point cap (2)", standard, Ablations.withoutDewPointCap(), FEW));
    print(row("without learned band (3)", standard, Ablations.withoutLearnedBand(), FEW));
    print(row("without trough (4)", standard, Ablations.withoutTrough(), FEW));
    for (BenchmarkShed shed : BenchmarkShed.values()) {
      if (shed != BenchmarkShed.STANDARD) {
        variant(shed.name().toLowerCase(Locale.ROOT), season(shed, weather, Contact.RELAY, false));
      }
    }
    variant("with dehumidifiers", season(BenchmarkShed.STANDARD, weather, Contact.RELAY, true));
    for (long year = 11; year <= 12; year++) {
      Weather other = GeneratedWeather.temperate(year);
      variant(
          "made-up weather " + year, season(BenchmarkShed.STANDARD, other, Contact.RELAY, false));
    }
    SeasonSpeed.print(example, weather, standard);
  }

  private static void variant(String name, BenchmarkSeason season) {
    head(name);
    Row ours = row("ours, relay", season, new RuleBasedController(), FEW);
    print(floor(season, ours));
    print(row("(a) plain, middle", season, ThermostatController.USUAL, FEW));
    print(ours);
  }

  private static BenchmarkSeason season(
      BenchmarkShed shed, Weather weather, Contact heater, boolean hasDehumidifier) {
    return new BenchmarkSeason(shed, weather, heater, hasDehumidifier);
  }

  private static Row row(String name, BenchmarkSeason season, Controller controller, int seeds) {
    return new Row(
        name,
        IntStream.rangeClosed(1, seeds)
            .parallel()
            .mapToObj(seed -> season.run(controller, seed))
            .toList());
  }

  private static Row floor(BenchmarkSeason season, Row compared) {
    Map<String, Double> fans = new LinkedHashMap<>();
    for (String room : List.of(BenchmarkShed.CURING, BenchmarkShed.STORAGE)) {
      fans.put(room, compared.median(s -> of(s, room).hoursOn(OutputKind.CIRCULATION)) / HOURS);
    }
    return new Row("floor", List.of(new Floor(season).run(fans)));
  }

  /** The plain settings that kept both rooms longest in range, over all seeds. */
  private static Row best(BenchmarkSeason season) {
    List<ThermostatController> grid = new ArrayList<>();
    for (double warmth : new double[] {0.3, 0.5, 0.7}) {
      for (int warmthBand : new int[] {500, 1_000, 2_000}) {
        for (double damp : new double[] {0.35, 0.5, 0.65}) {
          grid.add(new ThermostatController(warmth, warmthBand, damp, 5_000));
        }
      }
    }
    ThermostatController best =
        grid.parallelStream()
            .max(
                Comparator.comparingDouble(
                    plain -> {
                      Map<String, Result> one = season.run(plain, 1);
                      return share(one, BenchmarkShed.CURING) + share(one, BenchmarkShed.STORAGE);
                    }))
            .orElseThrow();
    String name =
        String.format(
            Locale.ROOT,
            "(b) plain, best: %.1f/%.1f K %.2f/%.0f %%",
            best.temperaturePlace(),
            best.temperatureBandMilliK() / 1000.0,
            best.humidityPlace(),
            best.humidityBandMilliPct() / 1000.0);
    return row(name, season, best, SEEDS);
  }

  private static void head(String what) {
    System.out.printf("%n### %s%n%n", what);
    System.out.println(
        "| | curing in range, % | storage in range, % | out of range, h | chilled air, K h |"
            + " chilled fruit, K h | wet fruit, h | heaters, kWh | all, kWh | switchings |");
    System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
  }

  private static void print(Row row) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %s | %.0f | %s | %s | %s | %.0f | %.0f | %.0f |%n",
        row.name(),
        shares(row, BenchmarkShed.CURING),
        shares(row, BenchmarkShed.STORAGE),
        row.median(s -> sum(s, r -> r.score().outOfRangeHours())),
        both(row, r -> r.score().airChillingKh()),
        both(row, r -> r.score().fruitChillingKh()),
        both(row, r -> r.score().wetFruitHours()),
        row.median(s -> sum(s, r -> r.kWh(OutputKind.HEATER))),
        row.median(s -> sum(s, Result::kWh)),
        row.median(s -> sum(s, SeasonTable::mechanical)));
    System.out.flush();
  }

  private static String shares(Row row, String room) {
    return String.format(
        Locale.ROOT,
        "%.1f (%.1f)",
        row.median(s -> share(s, room)),
        row.least(s -> share(s, room)));
  }

  private static String both(Row row, ToDoubleFunction<Result> of) {
    return String.format(
        Locale.ROOT, "%.1f (%.1f)", row.median(s -> sum(s, of)), row.worst(s -> sum(s, of)));
  }

  /** Switchings of contacts that wear; those of a solid-state heater do not. */
  private static double mechanical(Result result) {
    return result.meters().entrySet().stream()
        .filter(m -> !(result.dosed() && m.getKey() == OutputKind.HEATER))
        .map(Map.Entry::getValue)
        .mapToInt(OutputMeter::switchings)
        .sum();
  }

  private static double share(Map<String, Result> season, String room) {
    return 100 * of(season, room).score().inRangeShare();
  }

  private static double sum(Map<String, Result> season, ToDoubleFunction<Result> of) {
    return season.values().stream().mapToDouble(of).sum();
  }

  private static Result of(Map<String, Result> season, String room) {
    Result result = season.get(room);
    if (result == null) {
      throw new IllegalStateException("no result of room " + room);
    }
    return result;
  }
}
