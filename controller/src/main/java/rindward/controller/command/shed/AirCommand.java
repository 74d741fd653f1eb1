package rindward.controller.command.shed;

import static rindward.controller.command.base.JsonOutput.known;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.Units;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.SaturationPressure;
import rindward.hardware.air.StandardAtmosphere;

/** {@code air}: what a temperature and a humidity mean together. */
@Command(
    name = "air",
    description = "Say what a temperature and a relative humidity mean together.",
    footer = {
      "",
      "Examples:",
      "  rindward air --temperature 25 --humidity 60 --altitude 200",
      "  rindward air --temperature 80 --humidity 80 --units us --json"
    })
public final class AirCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--temperature",
      required = true,
      paramLabel = "DEGREES",
      description = "Air temperature: -40..60 C, or -40..140 F with --units us.")
  private double temperature;

  @Option(
      names = "--humidity",
      required = true,
      paramLabel = "PERCENT",
      description = "Relative humidity, 0..100 %%; below freezing over ice.")
  private double humidityPct;

  @Option(
      names = "--altitude",
      paramLabel = "HEIGHT",
      description = "Height above the sea in metres, or in feet with --units us; 0 if not given.")
  private double altitude;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description =
          "With us, temperatures are given and shown in degrees F and the altitude is given in"
              + " feet; the other figures, and all of --json, stay metric.")
  private Units units = Units.METRIC;

  @Option(names = "--json", description = "Answer as one JSON object, in degrees C.")
  private boolean json;

  @Override
  public Integer call() {
    MoistAir air = air();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOutput.print(out, Answer.of(air));
    } else {
      print(out, air);
    }
    return ExitCode.FINE;
  }

  private MoistAir air() {
    require(
        "--temperature",
        temperature,
        units.fromCelsius(MoistAir.LOWEST_C),
        units.fromCelsius(MoistAir.HIGHEST_C),
        units.degrees());
    require("--humidity", humidityPct, 0, 100, "%");
    require(
        "--altitude",
        altitude,
        units.fromMetres(StandardAtmosphere.LOWEST_M),
        units.fromMetres(StandardAtmosphere.HIGHEST_M),
        units.lengths());
    return new MoistAir(
        units.toCelsius(temperature),
        humidityPct,
        StandardAtmosphere.pressurePa(units.toMetres(altitude)));
  }

  private void require(String option, double value, double low, double high, String unit) {
    if (!(low <= value && value <= high)) {
      throw new ParameterException(
          spec.commandLine(),
          String.format(
              Locale.ROOT,
              "%s was %s but it must lie in %.0f..%.0f %s",
              option,
              value,
              low,
              high,
              unit));
    }
  }

  private void print(PrintWriter out, MoistAir air) {
    out.printf(
        Locale.ROOT,
        "Air of %.1f %s and %.1f %% relative humidity at %.2f kPa%n%n",
        temperature,
        units.degrees(),
        humidityPct,
        air.pressurePa() / 1000);
    boolean frost = air.dewPointC() < SaturationPressure.TRIPLE_POINT_C;
    row(
        out,
        frost ? "frost point" : "dew point",
        degrees(air.dewPointC()),
        units.degrees(),
        frost ? "a colder surface frosts over" : "a colder surface gets wet");
    row(out, "wet bulb", degrees(air.wetBulbC()), units.degrees(), "a wet surface cools to this");
    row(
        out,
        "drying power",
        number(2, air.vapourPressureDeficitKPa()),
        "kPa",
        "vapour-pressure deficit");
    row(out, "water in the air", number(2, air.absoluteHumidityGM3()), "g/m3", "absolute humidity");
    row(out, "humidity ratio", number(2, air.humidityRatio() * 1000), "g/kg", "water per dry air");
    row(
        out,
        "heat content",
        number(1, air.enthalpyKJKg()),
        "kJ/kg",
        "enthalpy, from dry air at 0 C");
    row(out, "density", number(3, air.densityKgM3()), "kg/m3", "water included");
    out.flush();
  }

  private String degrees(double temperatureC) {
    return Double.isNaN(temperatureC) ? "none" : number(1, units.fromCelsius(temperatureC));
  }

  private static String number(int decimals, double value) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static void row(PrintWriter out, String what, String value, String unit, String meaning) {
    out.printf("  %-16s %8s %-5s   %s%n", what, value, unit, meaning);
  }

  /** The keys of {@code --json}: degrees C, percent, kg/kg, g/m3, kPa, kJ per kg of dry air. */
  private record Answer(
      double temperatureC,
      double relativeHumidity,
      @Nullable Double dewPointC,
      double humidityRatio,
      double absoluteHumidityGM3,
      double wetBulbC,
      double vapourPressureDeficitKPa,
      double enthalpyKJKg) {

    static Answer of(MoistAir air) {
      return new Answer(
          air.temperatureC(),
          air.relativeHumidityPct(),
          known(air.dewPointC()),
          air.humidityRatio(),
          air.absoluteHumidityGM3(),
          air.wetBulbC(),
          air.vapourPressureDeficitKPa(),
          air.enthalpyKJKg());
    }
  }
}
