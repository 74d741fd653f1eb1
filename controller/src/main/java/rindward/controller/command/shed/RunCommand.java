package rindward.controller.command.shed;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.FileCommand;
import rindward.controller.command.base.FirstOwner;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.StartingPoint;

/** {@code run}: the daemon. */
@Command(
    name = "run",
    description = {
      "Watch and run the shed until stopped (Ctrl-C or SIGTERM). With a broken settings file, by"
          + " what",
      "it was last run by."
    },
    footer = {"", "Example:", "  rindward run --settings controller/examples/shed.toml"})
public final class RunCommand extends FileCommand {
  private static final Logger LOG = LoggerFactory.getLogger(RunCommand.class);

  /** Kept reachable, and with it the lock on the shed. */
  private @Nullable ShedStart shed;

  @Override
  protected int on(Path file) throws IOException, InterruptedException {
    Problems problems = new Problems();
    Optional<StartingPoint> start = StartingPoint.of(file, problems);
    complain(problems);
    if (start.isEmpty()) {
      return ExitCode.WRONG_USAGE;
    }
    if (!start.get().saying().isEmpty()) {
      complain(start.get().saying(), ExitCode.WRONG_USAGE);
    }
    Time time = Time.system();
    shed = new ShedStart(file, start.get(), time, RealBoard.machines(time));
    Daemon daemon = shed.daemon(HostMachine.system());
    Runtime.getRuntime().addShutdownHook(new Thread(daemon::close, "stop"));
    PrintWriter out = out();
    daemon.start(1);
    out.printf("Running %s%n", shed.settings().siteName());
    Page page = new Page(shed.settings(), daemon.view(), time);
    try {
      page.open(code -> FirstOwner.announce(out, code));
      out.printf("The page: %s%n", shed.settings().page().url(page.port()));
    } catch (IllegalStateException e) {
      LOG.error("The rooms are run without a page: {}", e.getMessage());
    }
    out.flush();
    if (daemon.awaitEnd()) {
      return ExitCode.FINE;
    }
    return complain(
        "The control has died; whoever started this starts it anew.", ExitCode.NOT_WELL);
  }
}
