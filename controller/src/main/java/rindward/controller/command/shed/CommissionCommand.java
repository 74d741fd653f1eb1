package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Time;
import rindward.controller.journal.OutputTried;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/** {@code commission}: every output, tried with a person beside it, and who saw it. */
@Command(
    name = "commission",
    description = {
      "Try every output with you beside it, and note who saw the right thing run.",
      "A room is only observed until all of its outputs were tried as they are wired now."
    },
    footer = {"", "Example:", "  rindward commission --by Wren --settings board.toml"})
public final class CommissionCommand extends ShedCommand {
  @Option(names = "--by", paramLabel = "NAME", description = "Who looks; the user if not given.")
  private String by = System.getProperty("user.name", "somebody");

  private final Attendance attendance;

  public CommissionCommand() {
    this(Attendance.here());
  }

  public CommissionCommand(Attendance attendance) {
    this.attendance = attendance;
  }

  @Override
  protected int on(Settings settings) throws IOException {
    if (settings.isSimulated()) {
      return say(
          "Everything in these settings is simulated: there is nothing to try.", ExitCode.FINE);
    }
    try (@Nullable BoardLock ours = BoardLock.take(settings.store()).orElse(null)) {
      if (ours == null) {
        throw new IOException("The daemon runs this shed; stop it first.");
      }
      try (Database database = new Database(settings.store())) {
        return walk(settings, new EntryService(new Journal(database), settings.crops()), out());
      }
    }
  }

  private int walk(Settings settings, EntryService door, PrintWriter out) {
    out.println(
        "Read hardware/SAFETY.md first. Go on only if an electrician has released the wiring,");
    out.println("the hand-reset high limits are in place, and you can see what will run.");
    Time time = attendance.time();
    OutputTrial trial =
        new OutputTrial(
            attendance.boards().apply(settings), attendance.pause(), attendance.questions(out));
    int exit = ExitCode.FINE;
    List<OutputSetting> all = new ArrayList<>(settings.safety().asOutput().stream().toList());
    all.addAll(settings.outputs());
    for (OutputSetting output : all) {
      String said;
      try {
        said = tried(trial, output) ? note(door, output, time) : "was not noted as tried.";
      } catch (IOException e) {
        said = "could not be tried: " + e.getMessage();
      }
      boolean isTried = TriedParts.isTried(output, door.journal());
      exit = isTried ? exit : ExitCode.NOT_WELL;
      say("Output " + output.name() + " " + said, exit);
    }
    return exit;
  }

  private static boolean tried(OutputTrial trial, OutputSetting output) throws IOException {
    return output.name().equals(Safety.HEARTBEAT) ? trial.ofHeartbeat(output) : trial.of(output);
  }

  private String note(EntryService door, OutputSetting output, Time time) {
    OutputTried tried =
        new OutputTried(output.room(), output.name(), output.driver().place(), time.now().at());
    return door.say(tried, by, UUID.randomUUID().toString(), OptionalLong.empty(), time.now().at())
        .refusal()
        .map(why -> "could not be noted: " + why)
        .orElse("was tried by " + by + ".");
  }
}
