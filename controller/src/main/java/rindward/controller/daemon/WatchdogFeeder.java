package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.diagnosis.UncommandedHeat;
import rindward.controller.settings.Settings;
import rindward.controller.task.SupervisedTask;
import rindward.hardware.Relay;
import rindward.hardware.Thousandths;
import rindward.hardware.linux.HardwareWatchdog;
import rindward.hardware.linux.ServiceNotification;

/**
 * Vouches for the control before those who would act if it hung: the heartbeat relay, the board's
 * watchdog, the service manager. Each hears of a complete tick and of nothing else; there is no
 * timer here that could vouch for a loop that hangs. The heartbeat, which keeps the relay before
 * all heaters closed, also stops for {@link UncommandedHeat}; it is toggled by the control loop's
 * own thread. The others are told by {@code teller}, so that no tick waits for them.
 */
final class WatchdogFeeder {
  private static final Logger LOG = LoggerFactory.getLogger(WatchdogFeeder.class);

  private final ServiceNotification service;
  private final @Nullable HardwareWatchdog watchdog;
  private final @Nullable Relay heartbeat;
  private final Executor teller;
  private final SupervisedTask telling;
  private final AtomicBoolean isTelling = new AtomicBoolean();
  private long lastTick;
  private boolean isHigh;
  private boolean wasReady;

  WatchdogFeeder(
      ServiceNotification service,
      @Nullable HardwareWatchdog watchdog,
      @Nullable Relay heartbeat,
      Executor teller,
      SupervisedTask telling) {
    this.service = service;
    this.watchdog = watchdog;
    this.heartbeat = heartbeat;
    this.teller = teller;
    this.telling = telling;
  }

  /** Arms what the settings ask for on this machine. */
  static WatchdogFeeder begin(
      HostMachine host,
      Settings settings,
      @Nullable Relay heartbeat,
      Executor teller,
      SupervisedTask telling) {
    return new WatchdogFeeder(host.service(), watchdog(host, settings), heartbeat, teller, telling);
  }

  /** Without its watchdog a board runs on, and says so: cold kills a crop too. */
  private static @Nullable HardwareWatchdog watchdog(HostMachine host, Settings settings) {
    Path device = settings.safety().watchdog();
    Path root = host.root();
    if (device == null || root == null) {
      return null;
    }
    try {
      return HardwareWatchdog.arm(device, root.resolve("sys"), settings.tick());
    } catch (IOException e) {
      LOG.error("The board runs without its watchdog: {}", e.getMessage());
      return null;
    }
  }

  /** Looks at the shed after a tick; a tick that failed left none that is new. Control thread. */
  void afterTick(@Nullable ShedSnapshot latest) {
    if (latest == null || latest.tick() == lastTick) {
      return;
    }
    lastTick = latest.tick();
    if (heartbeat != null && !UncommandedHeat.isIn(latest)) {
      toggle(heartbeat);
    }
    if (isTelling.compareAndSet(false, true)) {
      teller.execute(
          () -> {
            try {
              telling.run(() -> tell(latest));
            } finally {
              isTelling.set(false);
            }
          });
    }
  }

  /**
   * Says that the service stops, and disarms the board's watchdog if the control is well: a clean
   * stop is no reason to start the board anew. After the teller has ended.
   */
  void close(boolean isWell) {
    try {
      service.stopping("Everything is switched off.");
    } catch (IOException e) {
      LOG.warn("{}", e.getMessage());
    }
    if (watchdog != null && isWell) {
      try {
        watchdog.close();
      } catch (IOException e) {
        LOG.error("{}", e.getMessage());
      }
    }
  }

  private void toggle(Relay line) {
    try {
      isHigh = !isHigh;
      line.set(isHigh);
    } catch (IOException | RuntimeException e) {
      LOG.error("The heartbeat could not be toggled, so its relay opens: {}", e.getMessage());
    }
  }

  private void tell(ShedSnapshot latest) throws IOException {
    if (watchdog != null) {
      watchdog.feed();
    }
    if (wasReady) {
      service.alive(status(latest));
    } else {
      service.ready(status(latest));
      wasReady = true;
    }
  }

  /** Returns the shed in one line: "curing 27.9 C, storage 11.2 C". */
  static String status(ShedSnapshot latest) {
    String rooms =
        latest.rooms().stream()
            .map(
                room ->
                    room.room().name()
                        + (room.picture().hasTemperature()
                            ? " " + tenths(room.picture().temperatureMilliC()) + " C"
                            : " without a reading"))
            .collect(Collectors.joining(", "));
    return latest.store().isEmpty() ? rooms : rooms + ". " + latest.store();
  }

  private static double tenths(int thousandths) {
    return Math.round(Thousandths.toDouble(thousandths) * 10) / 10.0;
  }
}
