package rindward.controller.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Another process, started as the service is. */
final class Jvm {
  /**
   * The flags that the service runs with. A small young generation is used over and over instead of
   * touching new memory: it halves what reading a season costs cold.
   */
  static final List<String> FLAGS =
      List.of("-Xmx64m", "-Xmn4m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  private Jvm() {}

  /** Returns a command that starts Java with the service's flags and {@code arguments}. */
  static ProcessBuilder with(List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(FLAGS);
    command.addAll(arguments);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
  }

  /** Runs a class with this process's class path and returns what it printed. */
  static String run(Class<?> main, String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(arguments));
    Process process = with(command).start();
    String printed =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    if (process.waitFor() != 0) {
      throw new IOException(main.getSimpleName() + " ended with " + process.exitValue());
    }
    return printed;
  }
}
