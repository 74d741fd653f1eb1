package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThread;

/**
 * Makes a copy of the database every night, or as soon as may be after a night in which the program
 * did not run. On a thread of its own: a copy takes as long as reading the whole file.
 */
final class NightlyBackup {
  private static final Logger LOG = LoggerFactory.getLogger(NightlyBackup.class);

  static final String TASK = "nightly-copy";

  /**
   * The start of the program has better things to do; and a copy that fails has read the whole
   * file.
   */
  private static final Cadence LOOKS =
      Cadence.every(Duration.ofMinutes(15))
          .startingAfter(Duration.ofMinutes(5))
          .retrying(Duration.ofMinutes(15), Duration.ofHours(1))
          .overdueAfter(Duration.ofHours(3));

  private final Copies copies;
  private final SampleLog samples;
  private final Time time;
  private final SupervisedTask looking;

  NightlyBackup(Copies copies, SampleLog samples, Time time, TaskSupervisor tasks) {
    this.looking = tasks.task(TASK, LOOKS);
    this.copies = copies;
    this.samples = samples;
    this.time = time;
  }

  /** Looks every now and then whether a copy is due. */
  void start(TaskThread thread) {
    looking.start(thread, this::look);
  }

  private void look() throws IOException {
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
    } catch (IOException | RuntimeException | Error e) {
      samples.copied(e.getMessage() == null ? e.toString() : e.getMessage());
      throw e;
    }
  }
}
