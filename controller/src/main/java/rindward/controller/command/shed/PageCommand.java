package rindward.controller.command.shed;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rindward.controller.command.base.ExitCode;
import rindward.controller.command.base.FileCommand;
import rindward.controller.command.base.FirstOwner;
import rindward.controller.daemon.Time;
import rindward.controller.page.PageProcess;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.StartingPoint;

/** {@code page}: the page of a shed that {@code run} watches, in a process of its own. */
@Command(
    name = "page",
    description = {
      "Show the shed of 'run' on its page, until stopped. 'run' does so by itself; a service"
          + " manager",
      "starts this beside 'run --without-page', as another user. It has no hand on any part."
    },
    footer = {"", "Example:", "  rindward page --settings /etc/rindward/rindward.toml"})
public final class PageCommand extends FileCommand {
  @Option(
      names = "--beside-run",
      hidden = true,
      description = "End when standard input ends: whoever started this is gone then.")
  private boolean isBesideRun;

  @Override
  protected int on(Path file) throws IOException, InterruptedException {
    Problems problems = new Problems();
    Optional<StartingPoint> start = StartingPoint.of(file, problems);
    if (start.isEmpty()) {
      complain(problems);
      return ExitCode.WRONG_USAGE;
    }
    Settings settings = start.get().settings();
    try (PageProcess page = new PageProcess(settings, Time.system())) {
      Runtime.getRuntime().addShutdownHook(new Thread(page::close, "stop"));
      if (isBesideRun) {
        endWithRun();
      }
      PrintWriter out = out();
      int port = page.open(code -> FirstOwner.announce(out, code));
      if (port > 0) {
        out.printf("The page: %s%n", settings.page().url(port));
        out.flush();
      }
      return page.awaitEnd()
          ? ExitCode.FINE
          : complain("The record is another one now; the page starts anew.", ExitCode.NOT_WELL);
    } catch (IllegalStateException e) {
      return complain(String.valueOf(e.getMessage()), ExitCode.NOT_WELL);
    }
  }

  /** However 'run' ended, kill -9 included, its page ends with it. */
  private static void endWithRun() {
    Thread watch =
        new Thread(
            () -> {
              try (InputStream in = System.in) {
                while (in.read() >= 0) {
                  // Nothing is said here.
                }
              } catch (IOException alsoGone) {
                // As good as an end.
              }
              System.exit(ExitCode.FINE);
            },
            "run");
    watch.setDaemon(true);
    watch.start();
  }
}
