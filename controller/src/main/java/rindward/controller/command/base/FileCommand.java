package rindward.controller.command.base;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rindward.controller.command.Main;
import rindward.controller.settings.Problems;
import rindward.controller.store.StoreException;

/**
 * A command that is given a settings file, which may be broken or missing, and tells in one
 * sentence what could not be done.
 */
public abstract class FileCommand implements Callable<Integer> {
  @Spec protected CommandSpec spec;
  @Mixin private SettingsOption settingsOption = new SettingsOption();

  /**
   * Does the work and returns the exit code.
   *
   * @throws IOException when it cannot be done; its message is printed, and the exit code is {@link
   *     Main#NOT_WELL}
   */
  protected abstract int on(Path file) throws IOException, InterruptedException;

  @Override
  public final Integer call() throws InterruptedException {
    try {
      return on(settingsOption.file());
    } catch (IOException | UncheckedIOException | StoreException e) {
      return complain(String.valueOf(e.getMessage()), ExitCode.NOT_WELL);
    } finally {
      out().flush();
    }
  }

  /** Returns the settings file that was named. */
  protected final Path file() {
    return settingsOption.file();
  }

  /** Returns where answers go; flushed at the end. */
  protected final PrintWriter out() {
    return spec.commandLine().getOut();
  }

  /** Prints a sentence, at once, and returns {@code exit}. */
  protected final int say(String sentence, int exit) {
    return print(out(), sentence, exit);
  }

  /** Prints a sentence where errors go, at once, and returns {@code exit}. */
  protected final int complain(String sentence, int exit) {
    return print(spec.commandLine().getErr(), sentence, exit);
  }

  /** Prints everything that is wrong with files, each on a line of its own. */
  protected final void complain(Problems problems) {
    problems.list().forEach(problem -> complain(problem.toString(), ExitCode.WRONG_USAGE));
  }

  /** Returns a refusal to be thrown: what was typed cannot be meant. */
  protected final ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  private static int print(PrintWriter to, String sentence, int exit) {
    to.println(sentence);
    to.flush();
    return exit;
  }
}
