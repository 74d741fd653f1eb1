package rindward.controller.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;

/** The {@code --settings} of every command that works on a shed. */
final class SettingsOption {
  @Option(
      names = "--settings",
      required = true,
      paramLabel = "FILE",
      description = "Settings file; see controller/examples/shed.toml for every key.")
  private Path file = Path.of("shed.toml");

  /** Reads the file; prints every problem of it to standard error when there is any. */
  Optional<Settings> read(CommandSpec spec) {
    Problems problems = new Problems();
    Optional<Settings> settings = SettingsReader.read(file, problems);
    problems.list().forEach(problem -> spec.commandLine().getErr().println(problem));
    spec.commandLine().getErr().flush();
    return settings;
  }
}
