package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.FileCommand;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.OffList;
import rindward.controller.settings.Wiring;

/**
 * {@code off}: switches everything off when the daemon could not, because it was killed. It goes by
 * what the shed was last run by, and by as much of the settings file as can be read. Each output by
 * itself, so that one that fails costs no other.
 */
@Command(
    name = "off",
    description = {
      "Switch every output off, without the daemon: for a service that was killed. Works with a",
      "broken or missing settings file too, by what the shed was last run by.",
      "Says what may still be on."
    },
    footer = {"", "Example:", "  rindward off --settings /etc/rindward/rindward.toml"})
public final class OffCommand extends FileCommand {
  private final RealBoard.Machines machines;

  OffCommand() {
    this(RealBoard.machines(Time.system()));
  }

  OffCommand(RealBoard.Machines machines) {
    this.machines = machines;
  }

  @Override
  protected int on(Path file) throws IOException {
    Wiring accepted = accepted(file);
    Wiring written = written(file);
    OffList list = OffList.of(accepted, written);
    if (accepted.equals(Wiring.NONE) && written.equals(Wiring.NONE)) {
      return complain("Nothing is known of what is wired here.", ExitCode.WRONG_USAGE);
    }
    if (list.parts().isEmpty() && list.doubts().isEmpty()) {
      return say("Nothing real is wired here: there is nothing to switch off.", ExitCode.FINE);
    }
    List<BoardLock> ours = new ArrayList<>();
    try {
      return takeAll(accepted, written, ours)
          ? allOff(list)
          : complain(
              "The daemon runs this shed and would switch on again; stop it first.",
              ExitCode.NOT_WELL);
    } finally {
      for (BoardLock lock : ours) {
        lock.close();
      }
    }
  }

  private Wiring accepted(Path file) {
    try {
      return Accepted.read(file).map(known -> Wiring.of(file, known.text())).orElse(Wiring.NONE);
    } catch (IOException e) {
      complain("Only the settings file is gone by: " + e.getMessage(), ExitCode.NOT_WELL);
      return Wiring.NONE;
    }
  }

  private Wiring written(Path file) {
    try {
      // Whatever is no UTF-8 costs the table it stands in.
      return Wiring.of(file, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
    } catch (NoSuchFileException e) {
      complain("There is no file " + file.toAbsolutePath() + ".", ExitCode.NOT_WELL);
    } catch (IOException e) {
      complain("The file " + file.toAbsolutePath() + " cannot be read: " + e, ExitCode.NOT_WELL);
    }
    return Wiring.NONE;
  }

  /** Takes hold of the shed; a full or broken disk is no reason to leave a heater on. */
  private static boolean takeAll(Wiring accepted, Wiring written, List<BoardLock> ours) {
    for (Path store :
        Stream.of(accepted.store(), written.store())
            .flatMap(Stream::ofNullable)
            .distinct()
            .toList()) {
      try {
        Optional<BoardLock> lock = BoardLock.take(store);
        if (lock.isEmpty()) {
          return false;
        }
        ours.add(lock.get());
      } catch (IOException cannotBeMade) {
        // Then no daemon can hold it either.
      }
    }
    return true;
  }

  private int allOff(OffList list) {
    int exit = ExitCode.FINE;
    for (OffList.Part part : list.parts()) {
      String output = "Output " + part.output().name();
      try {
        RealBoard.switchOff(machines.next(), part);
        say(output + " is off (" + part.output().driver().place() + ").", exit);
      } catch (IOException | RuntimeException e) {
        exit = complain(output + " may still be on: " + e.getMessage(), ExitCode.NOT_WELL);
      }
    }
    for (String doubt : list.doubts()) {
      exit = complain(doubt, ExitCode.NOT_WELL);
    }
    return exit;
  }
}
