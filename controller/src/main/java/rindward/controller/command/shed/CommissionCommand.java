package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.BoardLock;
import rindward.controller.journal.Entry;
import rindward.controller.journal.OutputTried;
import rindward.controller.settings.Settings;
import rindward.controller.settings.TrialNotes;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/** {@code commission}: every output and what protects it, tried with a person beside it. */
@Command(
    name = "commission",
    description = {
      "Try every output with you beside it, and what protects a heated room; note who saw it and"
          + " when.",
      "A room is only observed until all of its outputs were tried as they are wired now. A heater"
          + " counts",
      "as tried once its protection was shown: RCDs, air-flow switch, contactors, frost thermostat,"
          + " limit.",
      "Once a year it asks again for what protects; leave out what is not due by any other word"
          + " than yes."
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
    Questions asks = attendance.questions(out);
    OutputTrial trial =
        new OutputTrial(
            attendance.boards().apply(settings),
            attendance.pause(),
            asks,
            () -> attendance.time().now().nanos());
    CommissioningWalk walk =
        new CommissioningWalk(
            settings,
            trial,
            new ProofWalk(trial, asks),
            entry -> note(door, entry),
            door::journal,
            () -> attendance.time().now().at(),
            line -> say(line, ExitCode.FINE),
            by);
    return walk.run() ? ExitCode.FINE : ExitCode.NOT_WELL;
  }

  /** That an output ran stands in the journal, and where only control can note it. */
  private Optional<String> note(EntryService door, Entry entry) {
    Optional<String> refusal =
        door.say(
                entry,
                by,
                UUID.randomUUID().toString(),
                OptionalLong.empty(),
                attendance.time().now().at())
            .refusal();
    if (refusal.isEmpty() && entry instanceof OutputTried tried) {
      try {
        TrialNotes.of(file()).add(List.of(tried));
      } catch (IOException e) {
        return Optional.of(String.valueOf(e.getMessage()));
      }
    }
    return refusal;
  }
}
