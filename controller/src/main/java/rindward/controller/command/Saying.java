package rindward.controller.command;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.OptionalLong;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rindward.controller.lot.Entry;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.Door.Said;
import rindward.controller.store.Journal;
import rindward.controller.store.StoreException;

/** The options of every command that says something, and the saying itself. */
final class Saying {
  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "When it happened, such as 2026-10-03T14:30 at the farm; now if not given.")
  private @Nullable String at;

  @Option(names = "--by", paramLabel = "NAME", description = "Who says so; the user if not given.")
  private String by = System.getProperty("user.name", "somebody");

  /** Returns when it happened. */
  Instant at(CommandSpec spec, ZoneId zone, Instant now) {
    if (at == null) {
      return now;
    }
    try {
      return at.endsWith("Z")
          ? Instant.parse(at)
          : LocalDateTime.parse(at).atZone(zone).toInstant();
    } catch (DateTimeException e) {
      throw new ParameterException(
          spec.commandLine(),
          "--at was '" + at + "' but it must be a time such as 2026-10-03T14:30");
    }
  }

  /** Says it, beside a running daemon if there is one; prints what became of it. */
  int say(CommandSpec spec, Settings settings, Entry entry, Instant now, String done) {
    try (Database database = new Database(settings.store())) {
      Said said =
          new Door(new Journal(database), settings.crops().keys())
              .say(entry, by, UUID.randomUUID().toString(), OptionalLong.empty(), now);
      if (said.refusal().isPresent()) {
        spec.commandLine().getErr().println(said.refusal().get());
        spec.commandLine().getErr().flush();
        return Main.WRONG_USAGE;
      }
      spec.commandLine().getOut().println(done);
      spec.commandLine().getOut().flush();
      return Main.FINE;
    } catch (StoreException e) {
      spec.commandLine().getErr().println(e.getMessage());
      spec.commandLine().getErr().flush();
      return Main.NOT_WELL;
    }
  }
}
