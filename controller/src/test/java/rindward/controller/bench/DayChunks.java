package rindward.controller.bench;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.History;
import rindward.controller.ledger.RangeCounter;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;

/** Rindward itself: day chunks, and the ledger counting them. */
final class DayChunks implements Contender {
  private @Nullable Database database;
  private @Nullable SampleStore store;

  @Override
  public String title() {
    return "day chunks and ledger";
  }

  @Override
  public Path file(Path folder) {
    return folder.resolve("chunks.sqlite");
  }

  @Override
  public void fill(Path folder) {
    try (Database filled = new Database(file(folder))) {
      fill(filled);
    }
  }

  /** Puts the invented season into a database. */
  static void fill(Database database) {
    SampleLog log = new SampleLog(database);
    Season.forEach(
        (second, temperature, humidity) -> {
          if (second % 86_400 == 0) {
            log.flush(1000 * second);
          }
          log.sample(Season.ROOM, 1000 * second, temperature, humidity);
        });
    if (!log.flush(1000 * Season.TO_SECOND).isFine()) {
      throw new IllegalStateException(log.health().sentence());
    }
  }

  @Override
  public void open(Path folder) {
    database = new Database(file(folder));
    database.open();
    store = new SampleStore(database, new SampleLog(database));
  }

  History history(String room) {
    return store.history(room);
  }

  @Override
  public Account ask() {
    return RangeCounter.account(
        history(Season.ROOM),
        Season.RANGE,
        Season.ACCURACY,
        1000 * Season.FROM_SECOND,
        1000 * Season.TO_SECOND,
        1000 * Season.HOLD_SECONDS);
  }

  @Override
  public void close() {
    database.close();
  }
}
