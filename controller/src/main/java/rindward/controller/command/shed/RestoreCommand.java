package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.ShedCommand;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.copies.Restored;
import rindward.controller.store.copies.Restoring;

/** {@code restore}: goes on from a copy, on this board or on a new one. */
@Command(
    name = "restore",
    description = {
      "Put a copy in the place of the database, with the daemon stopped.",
      "The copy is read to its end first; what was there is kept beside it.",
      "Everybody signs in anew, and API tokens are made anew. Who was removed since the copy was",
      "made stays removed, and passwords are those of now, where that can be known."
    },
    footer = {
      "",
      "Examples:",
      "  rindward restore --settings shed.toml",
      "  rindward restore --settings shed.toml /media/stick/rindward-20261125T090000Z.db"
    })
public final class RestoreCommand extends ShedCommand {
  @Parameters(
      arity = "0..1",
      paramLabel = "COPY",
      description = "The copy; the newest one that is whole if not given.")
  private @Nullable Path copy;

  @Option(
      names = "--people-of-the-copy",
      description =
          "Let those sign in who could when the copy was made, with their passwords of then.")
  private boolean isPeopleOfCopy;

  @Override
  protected int on(Settings settings) throws IOException {
    try (@Nullable BoardLock ours = BoardLock.take(settings.store()).orElse(null)) {
      if (ours == null) {
        throw new IOException("The daemon keeps this database open; stop it first.");
      }
      restore(settings.store(), wanted(settings), Time.system().now().at());
      return ExitCode.FINE;
    }
  }

  private Collection<Path> wanted(Settings settings) throws IOException {
    if (copy != null) {
      return List.of(copy.toAbsolutePath());
    }
    try (Database database = new Database(settings.store())) {
      Collection<Path> all =
          new Copies(database, settings.backups(), settings.zone()).all().values();
      if (all.isEmpty()) {
        throw new IOException(
            "There is no copy in " + settings.backups() + "; name the one that you want.");
      }
      return all;
    }
  }

  /** Takes the first that is whole. */
  private void restore(Path store, Collection<Path> copies, Instant now) throws IOException {
    Iterator<Path> left = copies.iterator();
    while (left.hasNext()) {
      Path one = left.next();
      try {
        tell(store, one, Restoring.restore(store, one, isPeopleOfCopy, now));
        return;
      } catch (IOException e) {
        if (!left.hasNext()) {
          throw e;
        }
        complain(String.valueOf(e.getMessage()), ExitCode.NOT_WELL);
      }
    }
  }

  private void tell(Path store, Path copy, Restored restored) {
    out().printf("%s is now what %s was.%n", store, copy);
    restored
        .before()
        .ifPresent(kept -> out().printf("What was there before is kept as %s.%n", kept));
    if (!restored.mayWork().isEmpty()) {
      out().printf("Everybody signs in anew: %s.%n", String.join(", ", restored.mayWork()));
      if (!restored.isPeopleKnown()) {
        out()
            .printf(
                "They could when the copy was made, with their passwords of then; remove on the"
                    + " page whom you have removed since.%n");
      }
    }
    if (!restored.leftOut().isEmpty()) {
      out()
          .printf(
              "Removed since the copy was made, and still: %s. With --people-of-the-copy they may"
                  + " sign in again.%n",
              String.join(", ", restored.leftOut()));
    }
  }
}
