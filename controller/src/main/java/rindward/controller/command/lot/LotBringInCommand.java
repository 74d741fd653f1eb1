package rindward.controller.command.lot;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.journal.Planted;
import rindward.controller.readiness.BringIn;
import rindward.controller.readiness.BringIn.InField;
import rindward.controller.readiness.BringIn.Place;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.Thousandths;

/** {@code lot bring-in}: what to bring in first before a cold night. */
@Command(
    name = "bring-in",
    description =
        "Say which plots to bring in first before a cold night: what it would hurt and what is"
            + " worth the most comes first. Without --low the lowest that the outdoor probe read in"
            + " the last day is taken.",
    footer = {"", "Example:", "  rindward lot bring-in --settings shed.toml --low -2"})
final class LotBringInCommand extends AskingCommand {
  private static final Duration A_DAY = Duration.ofDays(1);

  @Option(
      names = "--low",
      paramLabel = "C",
      description = "Lowest temperature in the forecast, degrees C.")
  private @Nullable Double lowC;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The keys of {@code --json}; the first plot is to be brought in first. */
  record Answer(double lowC, boolean isForecast, List<PlotAnswer> plots) {}

  /** One plot. */
  record PlotAnswer(
      String code, String plot, String crop, String variety, int plants, List<String> reasons) {
    static PlotAnswer of(Place place) {
      Planted plan = place.field().plan();
      return new PlotAnswer(
          plan.lot(), plan.plot(), plan.crop(), plan.variety(), plan.plants(), place.reasons());
    }

    String line() {
      return code
          + "  "
          + (crop + " " + variety).strip()
          + ", plot "
          + plot
          + ", "
          + plants
          + (plants == 1 ? " plant" : " plants");
    }
  }

  @Override
  protected int answer(Farm farm, Database database) {
    int low =
        lowC == null
            ? lowest(farm, database)
                .orElseThrow(
                    () ->
                        wrong(
                            "--low was not given and no outdoor probe read anything in the last"
                                + " day: give the forecast's lowest, such as --low -2"))
            : Thousandths.of(lowC);
    if (low < -40_000 || low > 40_000) {
      throw wrong("--low was '" + low / 1000.0 + "' but it must be -40 to 40 degrees C");
    }
    List<PlotAnswer> plots =
        BringIn.order(inField(farm), low, LocalDate.ofInstant(farm.now(), farm.settings().zone()))
            .stream()
            .map(PlotAnswer::of)
            .toList();
    PrintWriter out = out();
    if (json) {
      JsonOutput.print(out, new Answer(Thousandths.toDouble(low), lowC != null, plots));
      return ExitCode.FINE;
    }
    if (lowC == null) {
      out.printf(
          "The last day's lowest outdoors was %s C; the next may be colder, so look at the"
              + " forecast.%n",
          Thousandths.toDouble(low));
    }
    if (plots.isEmpty()) {
      out.println("No planned plot is still in the field.");
    }
    int place = 1;
    for (PlotAnswer plot : plots) {
      out.println(place++ + ". " + plot.line());
      plot.reasons().forEach(reason -> out.println("     " + reason));
    }
    out.flush();
    return ExitCode.FINE;
  }

  /** Plots whose lot has not come in, this season's only: a year's old plan bears no fruit. */
  private static List<InField> inField(Farm farm) {
    Instant lastYear = farm.now().minus(Duration.ofDays(365));
    return farm.lots().plans().values().stream()
        .filter(plan -> farm.lot(plan.lot()).isEmpty() && plan.at().isAfter(lastYear))
        .flatMap(
            plan ->
                farm.settings().crops().crop(plan.crop()).stream()
                    .map(crop -> new InField(plan, crop, farm.lots().fieldDays(plan.lot()))))
        .toList();
  }

  private static Optional<Integer> lowest(Farm farm, Database database) {
    int[] lowest = {Integer.MAX_VALUE};
    long to = farm.now().toEpochMilli();
    new SampleStore(database, new SampleLog(database))
        .history(SampleLog.OUTDOORS)
        .forEach(
            to - A_DAY.toMillis(),
            to,
            run -> {
              for (int i = 0; i < run.count(); i++) {
                int t = run.temperatureMilliC()[i];
                if (t != Thousandths.NONE
                    && run.startMillis() + (long) i * run.stepMillis() >= to - A_DAY.toMillis()) {
                  lowest[0] = Math.min(lowest[0], t);
                }
              }
            });
    return lowest[0] == Integer.MAX_VALUE ? Optional.empty() : Optional.of(lowest[0]);
  }
}
