package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.notice.LivenessPing;
import rindward.controller.settings.Calls;

/**
 * Gives a sign of life as long as the rooms are looked at. A board that hangs, or has lost its
 * power or its network, gives none, and whoever waits for it raises the alarm.
 */
final class LivenessSender {
  /** A tick older than this is no sign of life. */
  private static final Duration FRESH = Duration.ofMinutes(2);

  private final LivenessPing sign;
  private final Duration every;
  private final Time time;

  private LivenessSender(LivenessPing sign, Duration every, Time time) {
    this.sign = sign;
    this.every = every;
    this.time = time;
  }

  /**
   * Prepares them; null where the settings name nobody.
   *
   * @throws IOException in one sentence, when the address cannot be read
   */
  static @Nullable LivenessSender open(Calls calls, Time time) throws IOException {
    Calls.Alive alive = calls.alive();
    return alive == null
        ? null
        : new LivenessSender(
            new LivenessPing(alive.address().open(System::getenv)), alive.every(), time);
  }

  /** Returns why the last sign was not taken, in one sentence; empty when all is well. */
  String trouble() {
    return sign.trouble();
  }

  /** Begins to give them. */
  void start(ShutdownStack ending, Supplier<@Nullable ShedSnapshot> latest) {
    ScheduledExecutorService worker = ending.thread("sign-of-life");
    var unused =
        worker.scheduleWithFixedDelay(
            () -> give(latest.get()), 5, every.toSeconds(), TimeUnit.SECONDS);
  }

  private void give(@Nullable ShedSnapshot snapshot) {
    Instant now = time.now().at();
    if (snapshot != null && snapshot.at().plus(FRESH).isAfter(now)) {
      sign.give();
    }
  }
}
