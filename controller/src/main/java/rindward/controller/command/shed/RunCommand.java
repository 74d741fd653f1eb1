package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.FileCommand;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.Problems;
import rindward.controller.settings.StartingPoint;

/** {@code run}: control, and the page beside it as a process of its own. */
@Command(
    name = "run",
    description = {
      "Watch and run the shed until stopped (Ctrl-C or SIGTERM), with its page beside it. With a"
          + " broken",
      "settings file, by what it was last run by."
    },
    footer = {"", "Example:", "  rindward run --settings controller/examples/shed.toml"})
public final class RunCommand extends FileCommand {
  @Option(
      names = "--without-page",
      description = "Start no page beside it: somebody else does, by 'rindward page'.")
  private boolean isWithoutPage;

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
    Daemon daemon = shed.daemon(HostMachine.system(Accepted.placeOf(file).getParent()));
    PageChild page =
        isWithoutPage ? null : new PageChild(PageChild.command(file), () -> time.now().nanos());
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  if (page != null) {
                    page.endSoon();
                  }
                  daemon.close(); // Everything is off before anything else is waited for.
                  if (page != null) {
                    page.close();
                  }
                },
                "stop"));
    daemon.start(1);
    daemon.listen();
    say("Running " + shed.settings().siteName(), ExitCode.FINE);
    if (page != null) {
      page.start();
    }
    if (daemon.awaitEnd()) {
      return ExitCode.FINE;
    }
    return complain(
        "The control has died; whoever started this starts it anew.", ExitCode.NOT_WELL);
  }
}
