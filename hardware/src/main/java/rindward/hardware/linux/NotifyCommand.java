package rindward.hardware.linux;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Runs the command that hands a message to the service manager; see {@link ServiceNotification}.
 */
final class NotifyCommand implements ServiceNotification.Notifier {
  /** How long a tick may be held up by a service manager that does not take messages. */
  static final Duration PATIENCE = Duration.ofSeconds(2);

  private final List<String> command;
  private final String socket;

  /**
   * @param command what to run before the assignments
   * @param environment where {@code NOTIFY_SOCKET} stands
   */
  NotifyCommand(List<String> command, Map<String, String> environment) {
    this.command = List.copyOf(command);
    this.socket = environment.getOrDefault("NOTIFY_SOCKET", "");
  }

  @Override
  public void send(List<String> assignments) throws IOException {
    List<String> line = new ArrayList<>(command);
    line.addAll(assignments);
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("NOTIFY_SOCKET", socket);
    builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    try {
      process.getOutputStream().close();
      if (!process.waitFor(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new IOException(
            "the service manager did not take "
                + assignments
                + " within "
                + PATIENCE.toSeconds()
                + " s");
      }
      if (process.exitValue() != 0) {
        throw new IOException(
            command.get(0)
                + " could not send "
                + assignments
                + " and ended with "
                + process.exitValue());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("told to stop while sending " + assignments);
    } finally {
      process.destroyForcibly();
    }
  }
}
