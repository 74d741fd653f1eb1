package rindward.controller.command;

import java.io.IOException;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.Host;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.hardware.Board;
import rindward.hardware.shed.GeneratedWeather;

/** {@code run}: the daemon. */
@Command(
    name = "run",
    description = "Watch and run the shed until stopped (Ctrl-C or SIGTERM).",
    footer = {"", "Example:", "  rindward run --settings controller/examples/shed.toml"})
final class RunCommand extends ShedCommand {
  /** Kept reachable: a lock that is collected is a lock let go of. */
  private @Nullable BoardLock lock;

  @Override
  int on(Settings read) throws IOException, InterruptedException {
    Settings settings = Tried.in(read);
    Daemon daemon = daemon(settings, Time.system());
    Runtime.getRuntime().addShutdownHook(new Thread(daemon::close, "stop"));
    PrintWriter out = out();
    daemon.start(1, code -> FirstOwner.announce(out, code));
    out.printf("Running %s%n", settings.siteName());
    if (daemon.port() > 0) {
      out.printf("The page: %s%n", settings.page(daemon.port()));
    }
    out.flush();
    if (daemon.awaitEnd()) {
      return Main.FINE;
    }
    return complain("The control has died; whoever started this starts it anew.", Main.NOT_WELL);
  }

  private Daemon daemon(Settings settings, Time time) throws IOException {
    lock = BoardLock.take(settings.store()).orElse(null);
    if (lock == null) {
      throw new IOException("Another rindward has its hands on this shed; stop it first.");
    }
    Board board = board(settings, time);
    try {
      return new Daemon(settings, board, time, Host.system());
    } catch (IOException | RuntimeException e) {
      board.close();
      throw e;
    }
  }

  private static Board board(Settings settings, Time time) throws IOException {
    if (settings.isSimulated()) {
      return SimulatedBoard.open(
          settings, GeneratedWeather.temperate(settings.simulation().seed()), time);
    }
    return RealBoard.of(settings, time).open();
  }
}
