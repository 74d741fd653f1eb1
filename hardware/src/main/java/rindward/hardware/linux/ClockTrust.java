package rindward.hardware.linux;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/**
 * Whether the date can be believed. A board without a battery wakes in the past until it finds the
 * network; what it measures then must not be dated by that clock.
 */
public enum ClockTrust {
  /** The system says that its clock was set from the network. */
  SYNCHRONISED,
  /** Nobody says so, but time has gone on since the last sample, as it must. */
  LATER_THAN_HISTORY,
  /** The clock shows a time at which there already was, or cannot have been, history. */
  DOUBTFUL;

  /** Written by systemd-timesyncd when it has set the clock (systemd-timesyncd.service(8)). */
  private static final Path SYNCHRONISED_FILE =
      Path.of("run", "systemd", "timesync", "synchronized");

  /**
   * Judges the clock.
   *
   * @param root usually {@code /}
   * @param wall what the clock says
   * @param lastStored when the last stored sample was taken; for an empty store, when this program
   *     was built
   */
  public static ClockTrust judge(Path root, Instant wall, Instant lastStored) {
    if (Files.exists(root.resolve(SYNCHRONISED_FILE))) {
      return SYNCHRONISED;
    }
    return wall.isAfter(lastStored) ? LATER_THAN_HISTORY : DOUBTFUL;
  }

  /** Tells whether samples may be dated by the clock. */
  public boolean isTrusted() {
    return this != DOUBTFUL;
  }
}
