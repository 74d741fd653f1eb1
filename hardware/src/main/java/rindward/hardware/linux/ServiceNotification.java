package rindward.hardware.linux;

import java.io.IOException;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Tells systemd how the service is: ready, one line of status, alive, stopping (sd_notify(3)).
 * Where there is no {@code NOTIFY_SOCKET}, as when started by hand, it does nothing.
 *
 * <p>The message is a Unix datagram, which Java 17 cannot send: its Unix sockets are streams only
 * (JEP 380). So each message runs the command {@code systemd-notify}, which is there wherever
 * systemd is, instead of a native library in this process for one datagram a tick. Two things
 * follow: the unit needs {@code NotifyAccess=all}, since the command is the sender, and a call
 * takes some milliseconds, at most {@link NotifyCommand#PATIENCE}. For one thread.
 */
public final class ServiceNotification {
  private final @Nullable Notifier notifier;
  private final @Nullable Duration watchdog;
  private String status = "";

  /** Sends assignments such as {@code READY=1}. */
  @FunctionalInterface
  interface Notifier {
    void send(List<String> assignments) throws IOException;
  }

  ServiceNotification(Map<String, String> environment, long pid, Notifier notifier) {
    boolean isListening = !environment.getOrDefault("NOTIFY_SOCKET", "").isEmpty();
    this.notifier = isListening ? notifier : null;
    this.watchdog = isListening ? watchdog(environment, pid) : null;
  }

  /**
   * Returns the way to the service manager that started this process; silent where there is none.
   *
   * @param environment of this process
   * @param pid of this process
   */
  public static ServiceNotification of(Map<String, String> environment, long pid) {
    return new ServiceNotification(
        environment, pid, new NotifyCommand(List.of("systemd-notify"), environment));
  }

  /** Returns within what time it wants to hear that the service is alive, if at all. */
  public Optional<Duration> watchdog() {
    return Optional.ofNullable(watchdog);
  }

  /**
   * Says that the service has started: outputs off, first tick done.
   *
   * @throws IOException in one sentence, when it could not be said
   */
  public void ready(String status) throws IOException {
    send("READY=1", status);
  }

  /**
   * Says that a complete healthy tick is over. Never called by a timer that runs by itself: it
   * would vouch for a loop that hangs.
   *
   * @throws IOException in one sentence, when it could not be said
   */
  public void alive(String status) throws IOException {
    if (watchdog != null) {
      send("WATCHDOG=1", status);
    } else if (!oneLine(status).equals(this.status)) {
      send(null, status);
    }
  }

  /**
   * Says that the service stops because it was told to.
   *
   * @throws IOException in one sentence, when it could not be said
   */
  public void stopping(String status) throws IOException {
    send("STOPPING=1", status);
  }

  private void send(@Nullable String state, String status) throws IOException {
    if (notifier == null) {
      return;
    }
    this.status = oneLine(status);
    List<String> assignments = new ArrayList<>();
    if (state != null) {
      assignments.add(state);
    }
    assignments.add("STATUS=" + this.status);
    notifier.send(assignments);
  }

  /** A line break would begin another assignment. */
  private static String oneLine(String status) {
    return status.replaceAll("\\R", " ");
  }

  /** The time counts for this process only if it is named, or none is (sd_watchdog_enabled(3)). */
  private static @Nullable Duration watchdog(Map<String, String> environment, long pid) {
    String micros = environment.getOrDefault("WATCHDOG_USEC", "");
    String owner = environment.getOrDefault("WATCHDOG_PID", Long.toString(pid));
    if (!micros.matches("[1-9][0-9]{0,14}") || !owner.equals(Long.toString(pid))) {
      return null;
    }
    return Duration.of(Long.parseLong(micros), ChronoUnit.MICROS);
  }
}
