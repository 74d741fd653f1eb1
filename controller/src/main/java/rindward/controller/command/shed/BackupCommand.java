package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.copies.Copies;

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
public final class BackupCommand extends ShedCommand {
  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "Where to; store.backups of the settings if not given.")
  private @Nullable Path to;

  @Override
  protected int on(Settings settings) throws IOException {
    try (Database database = new Database(settings.store())) {
      if (!Files.exists(settings.store())) {
        throw new IOException("There is no database " + settings.store() + " to be copied yet.");
      }
      Copies copies = new Copies(database, to == null ? settings.backups() : to, settings.zone());
      Path copy = copies.make(Time.system().now().at());
      return say(
          String.format(
              Locale.ROOT,
              "Copied to %s (%.1f MB), read back and found whole.",
              copy,
              Files.size(copy) / 1e6),
          ExitCode.FINE);
    }
  }
}
