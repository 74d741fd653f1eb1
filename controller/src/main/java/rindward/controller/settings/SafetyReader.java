package rindward.controller.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.Settings.Safety;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.wired.GpioDriver;

/**
 * Reads what acts when the program hangs: the board's watchdog, the heartbeat's line, and the
 * rooms' high limits.
 */
final class SafetyReader {
  private static final Kind<String> DEVICE =
      Kind.pattern("/dev/watchdog[0-9]*", "be the device of a watchdog, as \"/dev/watchdog\"");

  /** The board's watchdog has about 15 s, and a tick may be 5 s late. */
  private static final Duration LONGEST_WATCHED_TICK = Duration.ofSeconds(10);

  /** Two edges and a margin within the 30 s that its relay waits. */
  private static final Duration LONGEST_BEATING_TICK = Duration.ofSeconds(12);

  private SafetyReader() {}

  static Safety read(
      TableReader top, Map<String, TableReader> rooms, OutputReader outputs, Duration tick) {
    Path watchdog = top.table("watchdog").map(table -> watchdog(table, tick)).orElse(null);
    GpioDriver heartbeat =
        top.table(Safety.HEARTBEAT).map(table -> heartbeat(table, outputs, tick)).orElse(null);
    Map<String, HighLimit> limits = new HashMap<>();
    rooms.forEach((name, room) -> HighLimit.read(room).ifPresent(l -> limits.put(name, l)));
    return new Safety(watchdog, heartbeat, limits);
  }

  private static @Nullable Path watchdog(TableReader table, Duration tick) {
    Path device = Path.of(table.required("device", DEVICE));
    if (tick.compareTo(LONGEST_WATCHED_TICK) > 0) {
      table.refuse("device", "control.tick must then be at most 10s");
    }
    table.rejectUnknown();
    return device;
  }

  /** It is told by its edges, so its level means nothing. */
  private static GpioDriver heartbeat(TableReader table, OutputReader outputs, Duration tick) {
    GpioDriver driver = new GpioDriver(table.required("line", Kind.whole(0, 27)), ActiveLevel.HIGH);
    if (tick.compareTo(LONGEST_BEATING_TICK) > 0) {
      table.refuse("line", "control.tick must then be at most 12s");
    }
    table.rejectUnknown();
    outputs.claimHeartbeat(table, driver);
    return driver;
  }
}
