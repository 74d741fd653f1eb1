package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.Progress;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.season.SeasonResult.RoomReport;
import rindward.controller.season.Sizing;
import rindward.controller.season.Sizing.Need;
import rindward.controller.settings.Settings;

/** {@code size}: which heater, humidifier and exhaust the rooms need. */
@Command(
    name = "size",
    description = {
      "Say which heater, humidifier and exhaust would keep these rooms, at what cost, and what"
          + " cannot be kept at all. Lives through the season once for every size that can be"
          + " bought. The shed is the one of [simulation], so judge whether it is like yours."
    },
    footer = {
      "",
      "Example:",
      "  rindward size --settings controller/examples/shed.toml --from 09-20 --days 120"
    })
public final class SizeCommand extends ShedCommand {
  /** Hours of trouble that are not worth a word. */
  private static final double FEW_HOURS = 24;

  @Mixin private SeasonOptions season = new SeasonOptions();

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  /** The answer as JSON. */
  record Answer(List<Need> rooms) {}

  @Override
  protected int on(Settings settings) {
    String refusal = season.refusal();
    if (refusal != null) {
      return complain(refusal, ExitCode.WRONG_USAGE);
    }
    if (settings.season().isEmpty()) {
      return complain(
          "[season] was missing but it must plan at least one lot, or every room rests; see"
              + " controller/examples/shed.toml",
          ExitCode.WRONG_USAGE);
    }
    PrintWriter out = out();
    try (Progress progress =
        new Progress("Seasons", Sizing.seasons(), "seasons", !json && Progress.isSomebodyThere())) {
      List<Need> needs =
          new Sizing(
                  settings,
                  season.weather(settings),
                  season.from(settings, Instant.now()),
                  season.days())
              .find(progress::step);
      progress.close();
      if (json) {
        JsonOutput.print(out, new Answer(needs));
      } else {
        needs.forEach(need -> print(out, need));
      }
      return ExitCode.FINE;
    } catch (IOException e) {
      return complain(String.valueOf(e.getMessage()), ExitCode.WRONG_USAGE);
    }
  }

  private static void print(PrintWriter out, Need need) {
    RoomReport report = need.report();
    out.printf(
        Locale.ROOT,
        "Room %s: a heater of %d W, %s, %s%n",
        need.room(),
        need.heaterW(),
        need.humidifierKgPerH() == 0
            ? "no humidifier"
            : String.format(Locale.ROOT, "a humidifier of %.1f kg/h", need.humidifierKgPerH()),
        need.exhaustM3PerS() == 0
            ? "no exhaust"
            : String.format(Locale.ROOT, "an exhaust of %.3f m3/s", need.exhaustM3PerS()));
    out.printf(
        Locale.ROOT,
        "  keep it in its range %.0f %% of the time for %.0f kWh%n",
        100 * report.inRangeShare(),
        report.kWh());
    List<String> left = left(report);
    if (!left.isEmpty()) {
      out.printf("  What they cannot do: %s%n", String.join("; ", left));
    }
  }

  private static List<String> left(RoomReport report) {
    List<String> left = new ArrayList<>();
    add(left, report.tooColdHours(), "too cold: the walls let out more heat than that");
    add(left, report.tooWarmHours(), "too warm: only a cooler could help, or a later start");
    add(left, report.tooDryHours(), "too dry, mostly while the room is being filled with water");
    add(left, report.tooDampHours(), "too damp: damp weather, which only a dehumidifier dries");
    return left;
  }

  private static void add(List<String> left, double hours, String what) {
    if (hours >= FEW_HOURS) {
      left.add(String.format(Locale.ROOT, "%.0f h %s", hours, what));
    }
  }
}
