package rindward.controller.command.base;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The {@code --settings} of every command that works on a shed. */
final class SettingsOption {
  @Option(
      names = "--settings",
      required = true,
      paramLabel = "FILE",
      description = "Settings file; see controller/examples/shed.toml for every key.")
  private Path file = Path.of("shed.toml");

  Path file() {
    return file;
  }
}
