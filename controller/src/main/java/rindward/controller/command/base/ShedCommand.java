package rindward.controller.command.base;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import rindward.controller.command.Main;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;

/** A command on the shed of a settings file: reads the file before anything else. */
public abstract class ShedCommand extends FileCommand {

  /**
   * Does the work and returns the exit code.
   *
   * @throws IOException when it cannot be done; its message is printed, and the exit code is {@link
   *     Main#NOT_WELL}
   */
  protected abstract int on(Settings settings) throws IOException, InterruptedException;

  @Override
  protected final int on(Path file) throws IOException, InterruptedException {
    Problems problems = new Problems();
    Optional<Settings> settings = SettingsReader.read(file, problems);
    complain(problems);
    return settings.isPresent() ? on(settings.get()) : ExitCode.WRONG_USAGE;
  }
}
