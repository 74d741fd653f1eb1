package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.OffList;
import rindward.controller.settings.Settings;
import rindward.controller.settings.StartingPoint;
import rindward.controller.settings.StartingPoint.Basis;
import rindward.controller.settings.TrialNotes;
import rindward.controller.settings.Wiring;
import rindward.controller.store.LastingWords;
import rindward.hardware.Board;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The daemon put together, with its hands on the shed and standing still: by a settings file, which
 * counts as accepted from then on, or by what was accepted before.
 */
final class ShedStart {
  private static final Logger LOG = LoggerFactory.getLogger(ShedStart.class);

  /** Written by the package's own watch when it has put the version of before back. */
  private static final String UPGRADE_UNDONE = "upgrade-undone";

  private final Path file;
  private final StartingPoint start;
  private final LastingWords lasting;
  private final Settings settings;
  private final Time time;
  private final RealBoard.Machines machines;

  /** Kept reachable: a lock that is collected is a lock let go of. */
  private @Nullable BoardLock lock;

  /**
   * @param file the settings file
   * @param start what to go by
   */
  ShedStart(Path file, StartingPoint start, Time time, RealBoard.Machines machines) {
    this.file = file;
    this.start = start;
    this.time = time;
    this.machines = machines;
    this.lasting =
        start.settings().isSimulated() ? LastingWords.unkept() : LastingWords.beside(file);
    Settings tried = TriedParts.in(start.settings(), TrialNotes.of(file), lasting);
    this.settings = start.basis() == Basis.ONLY_OBSERVED ? tried.observed() : tried;
  }

  Settings settings() {
    return settings;
  }

  /**
   * Takes hold of the shed.
   *
   * @throws IOException in one sentence, when that cannot be done; then everything is off
   */
  Daemon daemon(HostMachine host) throws IOException {
    lock = BoardLock.take(settings.store()).orElse(null);
    if (lock == null) {
      throw new IOException("Another rindward has its hands on this shed; stop it first.");
    }
    Optional<Accepted> before = before();
    before.ifPresent(this::switchOffWhatIsNamedNoLonger);
    Board board = board();
    try {
      Daemon daemon = new Daemon(settings, board, time, host);
      if (start.basis() == Basis.FILE) {
        accept(before);
      }
      daemon.goBy(lasting);
      start.finding().ifPresent(daemon::tell);
      if (Files.exists(Accepted.placeOf(file).resolveSibling(UPGRADE_UNDONE))) {
        daemon.tell(new Finding(AlarmKind.UPGRADE_UNDONE, ""));
      }
      return daemon;
    } catch (IOException | RuntimeException e) {
      board.close();
      throw e;
    }
  }

  /** Lets go of the shed; for a daemon that has ended. */
  void letGo() throws IOException {
    if (lock != null) {
      lock.close();
    }
  }

  private Optional<Accepted> before() {
    try {
      return Accepted.read(file);
    } catch (IOException e) {
      LOG.error("{}", e.getMessage());
      return Optional.empty();
    }
  }

  /** A daemon that was killed left its outputs as they were, and this one does not know them. */
  private void switchOffWhatIsNamedNoLonger(Accepted accepted) {
    OffList left = OffList.leftBehind(Wiring.of(file, accepted.text()), settings.outputs());
    for (OffList.Part part : left.parts()) {
      try {
        RealBoard.switchOff(machines.next(), part);
      } catch (IOException | RuntimeException e) {
        LOG.error(
            "Output {}, which the settings name no longer, may still be on: {}",
            part.output().name(),
            e.getMessage());
      }
    }
  }

  private void accept(Optional<Accepted> before) {
    try {
      String text = Files.readString(file);
      if (before.filter(known -> known.text().equals(text)).isEmpty()) {
        new Accepted(text, time.now().at(), System.getProperty("user.name", "somebody")).keep(file);
      }
    } catch (IOException e) {
      LOG.error("{}", e.getMessage());
    }
  }

  private Board board() throws IOException {
    if (settings.isSimulated()) {
      return SimulatedBoard.open(
          settings, GeneratedWeather.temperate(settings.simulation().seed()), time);
    }
    return new RealBoard(settings, machines).open();
  }
}
