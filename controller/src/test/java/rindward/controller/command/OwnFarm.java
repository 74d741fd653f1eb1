package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rindward.controller.command.demo.DemoCommand;

/** A farm of one's own to type commands at. */
public record OwnFarm(Path settings) {
  public static OwnFarm in(Path folder) throws IOException {
    Path file = Files.createDirectories(folder).resolve("shed.toml");
    try (InputStream in = DemoCommand.class.getResourceAsStream("shed.toml")) {
      Files.copy(in, file);
    }
    return new OwnFarm(file);
  }

  /** Runs a command that must succeed, and returns what it printed. */
  public String done(String... args) {
    CommandRun run = run(args);
    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    return run.out();
  }

  /** Runs a command that must be refused, and returns why. */
  String refused(String... args) {
    CommandRun run = run(args);
    assertThat(run.exit()).isEqualTo(2);
    return run.err();
  }

  private CommandRun run(String... args) {
    List<String> all = new ArrayList<>(Arrays.asList(args));
    all.addAll(List.of("--settings", settings.toString()));
    CommandRun run = CommandRun.of(all.toArray(String[]::new));
    return new CommandRun(run.exit(), run.out().replace("\r\n", "\n"), run.err());
  }
}
