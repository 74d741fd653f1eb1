package rindward.controller.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Consumer;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;

/**
 * What was measured in each room, from disk and from the memory that waits to be flushed. For any
 * thread.
 */
public final class SampleStore {
  private final Database database;
  private final SampleLog log;

  public SampleStore(Database database, SampleLog log) {
    this.database = database;
    this.log = log;
  }

  /**
   * Returns the history of a room, up to the last sample noted; empty for a room of which nothing
   * is kept. Reading it throws {@link StoreException} when the database cannot be read.
   */
  public History history(String room) {
    return (fromMillis, toMillis, visit) -> {
      // Memory first: what is flushed in between is then seen twice, which does no harm.
      List<Run> held = log.held(room);
      database.read(connection -> read(connection, room, held, fromMillis, toMillis, visit));
    };
  }

  private int read(
      Connection connection,
      String room,
      List<Run> held,
      long fromMillis,
      long toMillis,
      Consumer<Run> visit)
      throws SQLException {
    Days days = new Days(held, fromMillis, toMillis, visit);
    if (fromMillis < toMillis) {
      long from = Samples.dayOf(Math.floorDiv(fromMillis, 1000)) * Samples.DAY_SECONDS;
      long to = Math.floorDiv(toMillis - 1, 1000) + 1;
      new Chunks(connection, database.file())
          .forEach(Rooms.find(connection, room), from, to, days::add);
    }
    days.end();
    return held.size();
  }
}
