package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.samples.SampleLog;

/**
 * Makes a copy of the database every night, or as soon as may be after a night in which the program
 * did not run. On a thread of its own: a copy takes as long as reading the whole file.
 */
final class NightlyBackup {
  private static final Logger LOG = LoggerFactory.getLogger(NightlyBackup.class);

  /** The start of the program has better things to do. */
  private static final int FIRST_MINUTES = 5;

  private static final int LOOK_MINUTES = 15;

  private final Copies copies;
  private final SampleLog samples;
  private final Time time;

  NightlyBackup(Copies copies, SampleLog samples, Time time) {
    this.copies = copies;
    this.samples = samples;
    this.time = time;
  }

  /** Looks every now and then whether a copy is due. */
  void start(ScheduledExecutorService thread) {
    var unused =
        thread.scheduleWithFixedDelay(this::look, FIRST_MINUTES, LOOK_MINUTES, TimeUnit.MINUTES);
  }

  /** Makes a copy if one is due; one that fails is tried again at the next look. */
  void look() {
    if (samples.isWaitingForDate()) {
      return;
    }
    try {
      Instant now = time.now().at();
      if (copies.isDue(now)) {
        Path copy = copies.make(now);
        samples.copied(null);
        LOG.info("The nightly copy is {}", copy);
      }
    } catch (IOException | RuntimeException e) {
      LOG.error("There is no nightly copy: {}", e.getMessage());
      samples.copied(e.getMessage());
    }
  }
}
