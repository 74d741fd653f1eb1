package rindward.controller.daemon;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.controller.store.StoreFiles;
import rindward.hardware.linux.ServiceNotification;

/**
 * The machine that the daemon runs on, as far as it looks after the daemon.
 *
 * @param root where its files begin, usually {@code /}; null where the clock is beyond doubt, as in
 *     a rehearsal
 * @param service the way to the service manager; silent where there is none
 * @param own the folder of what control keeps for itself, which whoever else may write the record
 *     may not write; null for the record's own
 */
public record HostMachine(@Nullable Path root, ServiceNotification service, @Nullable Path own) {
  private static final Path ROOT = Path.of("/");

  /**
   * Returns this machine.
   *
   * @param own the folder of what control keeps for itself
   */
  public static HostMachine system(@Nullable Path own) {
    return new HostMachine(
        ROOT, ServiceNotification.of(System.getenv(), ProcessHandle.current().pid()), own);
  }

  /** Returns a machine that nobody asks: for a shed whose time is moved by hand. */
  public static HostMachine none() {
    return new HostMachine(null, ServiceNotification.of(java.util.Map.of(), 0), null);
  }

  /** Returns where control keeps something of a record for itself. */
  Path own(Path store, String ending) {
    Path beside = StoreFiles.beside(store, ending);
    return own == null ? beside : own.resolve(beside.getFileName());
  }
}
