package rindward.controller.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.store.Copies;
import rindward.controller.store.Database;

/** {@code backup}: a copy of everything kept, now, whether the daemon runs or not. */
@Command(
    name = "backup",
    description = {
      "Copy the database and read the copy back; the daemon may be running.",
      "The daemon does this by itself every night. Seven days and four weeks are kept."
    },
    footer = {
      "",
      "Examples:",
      "  rindward backup --settings shed.toml",
      "  rindward backup --settings shed.toml --to /media/stick"
    })
final class BackupCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "Where to; store.backups of the settings if not given.")
  private @Nullable Path to;

  @Override
  public Integer call() {
    Optional<Settings> read = settingsOption.read(spec);
    if (read.isEmpty()) {
      return Main.WRONG_USAGE;
    }
    Settings settings = read.get();
    PrintWriter out = spec.commandLine().getOut();
    try (Database database = new Database(settings.store())) {
      if (!Files.exists(settings.store())) {
        throw new IOException("There is no database " + settings.store() + " to be copied yet.");
      }
      Copies copies = new Copies(database, to == null ? settings.backups() : to, settings.zone());
      Path copy = copies.make(Time.system().now().at());
      out.printf(
          Locale.ROOT,
          "Copied to %s (%.1f MB), read back and found whole.%n",
          copy,
          Files.size(copy) / 1e6);
      out.flush();
      return Main.FINE;
    } catch (IOException e) {
      spec.commandLine().getErr().println(e.getMessage());
      spec.commandLine().getErr().flush();
      return Main.NOT_WELL;
    }
  }
}
