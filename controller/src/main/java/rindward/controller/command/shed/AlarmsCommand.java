package rindward.controller.command.shed;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.LockOuts;
import rindward.controller.alarm.Priority;
import rindward.controller.command.base.AskingCommand;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.Farm;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EventLog;
import rindward.controller.store.Journal;

/** {@code alarms}: what is open, and that somebody has seen it; beside a running daemon. */
@Command(
    name = "alarms",
    description = {
      "Say what is open and what to do, as it was noted within the last minute.",
      "With --seen, say that you have seen one: there is no further word of it.",
      "With --reset, reset one that is over and waits for it; a heater that did not stop is"
          + " released",
      "only with --code, which stands on the board in the file that ends in .lockout, in control's"
          + " own",
      "folder: /var/lib/rindward-control, or that of the settings file."
    },
    footer = {
      "",
      "Examples:",
      "  rindward alarms --settings shed.toml",
      "  rindward alarms --settings shed.toml --seen too-dry@storage --name Wren",
      "  rindward alarms --settings shed.toml --reset heater-runaway@storage/storage-heater"
          + " --code 384172"
    })
public final class AlarmsCommand extends AskingCommand {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  @Option(names = "--seen", paramLabel = "ALARM", description = "Its word, as the list shows it.")
  private @Nullable String seen;

  @Option(names = "--reset", paramLabel = "ALARM", description = "Its word, as the list shows it.")
  private @Nullable String reset;

  @Option(names = "--code", paramLabel = "CODE", description = "What stands on the board.")
  private @Nullable String code;

  @Option(
      names = "--name",
      paramLabel = "NAME",
      description = "Who says so; the user if not given.")
  private String name = System.getProperty("user.name", "somebody");

  @Override
  protected int answer(Farm farm, Database database) {
    AlarmTable table = AlarmTableReader.builtIn();
    Map<AlarmId, AlarmLog.Noted> newest = new AlarmLog(new EventLog(database)).newest(0);
    List<AlarmId> open =
        newest.entrySet().stream()
            .filter(e -> e.getValue().turn().alarm().state().isOpen())
            .map(Map.Entry::getKey)
            .filter(id -> table.row(id.kind()).priority() != Priority.NEWS)
            .sorted(
                Comparator.comparing((AlarmId id) -> table.row(id.kind()).priority())
                    .thenComparing(AlarmId::key))
            .toList();
    PrintWriter out = out();
    if (seen != null) {
      return answer(AlarmAnswer.ACKNOWLEDGED, "--seen", seen, open, farm, database);
    }
    if (reset != null) {
      return answer(AlarmAnswer.RESET, "--reset", reset, open, farm, database);
    }
    if (open.isEmpty()) {
      out.println("Nothing is open.");
    }
    for (AlarmId id : open) {
      AlarmRow row = table.row(id.kind());
      AlarmLog.Noted noted = newest.get(id);
      Instant since =
          Instant.ofEpochSecond(
              noted == null ? 0 : noted.turn().alarm().condition().sinceSeconds());
      out.printf(
          "%s%s, since %s  (%s)%n    What to do: %s%n",
          row.priority() == Priority.WAKE ? "URGENT  " : "",
          row.name(),
          since.atZone(farm.settings().zone()).format(TIME),
          id.key(),
          row.action());
    }
    out.flush();
    return open.isEmpty() ? ExitCode.FINE : ExitCode.NOT_WELL;
  }

  private int answer(
      AlarmAnswer answer,
      String option,
      String word,
      List<AlarmId> open,
      Farm farm,
      Database database) {
    AlarmId id =
        AlarmId.of(word)
            .filter(open::contains)
            .orElseThrow(() -> wrong(option + " was '" + word + "' but no such alarm is open"));
    if (answer == AlarmAnswer.RESET && LockOuts.isAbout(id) && code == null) {
      throw wrong("--code was left out, but it must be what stands on the board for " + id.key());
    }
    EntryService door = new EntryService(new Journal(database), farm.settings().crops());
    EntryService.Said said =
        door.say(
            new AlarmAnswered(id.key(), answer, null, farm.now(), code),
            name,
            UUID.randomUUID().toString(),
            OptionalLong.empty(),
            farm.now());
    PrintWriter out = out();
    out.println(
        said.refusal().orElse("Noted. The daemon heeds it within a minute: " + id.key() + "."));
    out.flush();
    return said.refusal().isPresent() ? ExitCode.WRONG_USAGE : ExitCode.FINE;
  }
}
