package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.command.base.Progress;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.control.Controller;
import rindward.controller.control.ThermostatController;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.season.Season;
import rindward.controller.season.SeasonResult;
import rindward.controller.settings.Settings;

/** {@code simulate}: a season with these settings in that weather, without hardware. */
@Command(
    name = "simulate",
    description = {
      "Live through a season as fast as it goes: the settings' rooms, with the control code of the"
          + " farm, in a simulated shed. The lots are those of [season] in the settings. Judged by"
          + " the shed's truth, not by its probes."
    },
    footer = {
      "",
      "Example:",
      "  rindward simulate --settings controller/examples/shed.toml --from 09-20 --days 180"
    })
public final class SimulateCommand extends ShedCommand {
  @Mixin private SeasonOptions season = new SeasonOptions();

  /** Who decides. */
  enum Decider {
    RINDWARD,
    PLAIN
  }

  @Option(
      names = "--controller",
      paramLabel = "rindward|plain",
      defaultValue = "rindward",
      description =
          "Who decides: this program, or a plain thermostat and humidistat to compare with. If not"
              + " given ${DEFAULT-VALUE}.")
  private Decider decider = Decider.RINDWARD;

  @Option(names = "--json", description = "Answer as one JSON object.")
  private boolean json;

  @Override
  protected int on(Settings settings) {
    String refusal = season.refusal();
    if (refusal != null) {
      return complain(refusal, ExitCode.WRONG_USAGE);
    }
    Controller controller =
        decider == Decider.PLAIN ? ThermostatController.USUAL : new RuleBasedController();
    PrintWriter out = out();
    try (Progress progress =
        new Progress("Season", season.days(), "days", !json && Progress.isSomebodyThere())) {
      SeasonResult report =
          new Season(
                  settings,
                  season.weather(settings),
                  season.from(settings, Instant.now()),
                  season.days())
              .run(controller, progress::step);
      progress.close();
      if (json) {
        JsonOutput.print(out, report);
      } else {
        SeasonText.print(out, report, settings.zone());
      }
      return ExitCode.FINE;
    } catch (IOException e) {
      return complain(String.valueOf(e.getMessage()), ExitCode.WRONG_USAGE);
    }
  }
}
