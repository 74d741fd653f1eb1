package rindward.controller.command.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The {@code --out} of every command that writes a file to be opened elsewhere. */
public final class SheetFile {
  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write it; to the screen if not given.")
  private @Nullable Path file;

  /** Writes it and returns the exit code. */
  public int write(CommandSpec spec, String text) {
    if (file == null) {
      spec.commandLine().getOut().print(text);
      spec.commandLine().getOut().flush();
      return ExitCode.FINE;
    }
    try {
      Files.writeString(file, text);
      return ExitCode.FINE;
    } catch (IOException e) {
      spec.commandLine().getErr().println(file + " could not be written: " + e.getMessage());
      spec.commandLine().getErr().flush();
      return ExitCode.NOT_WELL;
    }
  }
}
