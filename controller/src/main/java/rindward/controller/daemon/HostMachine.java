package rindward.controller.daemon;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.hardware.linux.ServiceNotification;

/**
 * The machine that the daemon runs on, as far as it looks after the daemon.
 *
 * @param root where its files begin, usually {@code /}; null where the clock is beyond doubt, as in
 *     a rehearsal
 * @param service the way to the service manager; silent where there is none
 */
public record HostMachine(@Nullable Path root, ServiceNotification service) {
  private static final Path ROOT = Path.of("/");

  /** Returns this machine. */
  public static HostMachine system() {
    return new HostMachine(
        ROOT, ServiceNotification.of(System.getenv(), ProcessHandle.current().pid()));
  }

  /** Returns a machine that nobody asks: for a shed whose time is moved by hand. */
  public static HostMachine none() {
    return new HostMachine(null, ServiceNotification.of(java.util.Map.of(), 0));
  }
}
