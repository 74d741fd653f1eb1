package rindward.controller.bench;

import java.nio.file.Path;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;

/** How fast samples go to the disk as the daemon sends them: a transaction for every 45 s. */
final class Storing {
  private static final int ROOMS = 2;
  private static final int SAMPLES = 1_000;

  private Storing() {}

  /** Returns the samples stored in a second, each batch of them on the disk before the next. */
  static double samplesPerSecond(Path folder) {
    try (Database database = new Database(folder.resolve("storing.sqlite"))) {
      database.open();
      SampleLog log = new SampleLog(database);
      int inBatch = Math.toIntExact(SampleLog.FLUSH_INTERVAL.toSeconds()) / Season.STEP_SECONDS;
      long begin = System.nanoTime();
      for (int i = 0; i < SAMPLES; i++) {
        long at = 1000 * (Season.FROM_SECOND + (long) i * Season.STEP_SECONDS);
        for (int room = 0; room < ROOMS; room++) {
          log.sample("room " + room, at, 12_000 + 10 * (i % 50), 60_000);
        }
        if (i % inBatch == inBatch - 1) {
          log.flush(at);
        }
      }
      return ROOMS * SAMPLES / ((System.nanoTime() - begin) / 1e9);
    }
  }
}
