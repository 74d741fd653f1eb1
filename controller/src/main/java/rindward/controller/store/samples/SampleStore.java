package rindward.controller.store.samples;

import java.lang.ref.SoftReference;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;
import rindward.controller.store.Database;
import rindward.controller.store.RoomIds;
import rindward.controller.store.StoreFiles;

/**
 * What was measured in each room, from disk and from the memory that waits to be flushed. For any
 * thread.
 */
public final class SampleStore {
  private final Database database;
  private final HeldSamples log;
  private volatile @Nullable OnDisk onDisk;
  private volatile Kept kept = new Kept(0, new SoftReference<>(new KeptDays()));

  public SampleStore(Database database, HeldSamples log) {
    this.database = database;
    this.log = log;
  }

  /** The rooms of which anything is on the disk, as its files were when last looked at. */
  private record OnDisk(FileTime changed, Set<String> rooms) {}

  /** Days that are let go before memory runs out: they are on the disk. */
  private record Kept(long rewrites, SoftReference<KeptDays> days) {}

  /**
   * Returns the history of a room, up to the last sample noted; empty for a room of which nothing
   * is kept. Reading it throws {@link StoreException} when the database cannot be read.
   */
  public History history(String room) {
    return (fromMillis, toMillis, visit) -> {
      // Memory first: what is flushed in between is then seen twice, which does no harm.
      List<Run> held = log.held(room);
      SampleDays days = new SampleDays(held, fromMillis, toMillis, visit);
      if (fromMillis < toMillis && isOnDisk(room)) {
        long from = Samples.dayOf(Math.floorDiv(fromMillis, 1000)) * Samples.DAY_SECONDS;
        long to = Math.floorDiv(toMillis - 1, 1000) + 1;
        KeptDays known = keptDays();
        database.read(connection -> read(connection, room, from, to, known, days));
      }
      days.end();
    };
  }

  /**
   * Returns when the newest sample on the disk was taken, epoch milliseconds; empty when there is
   * none. Reading it throws {@link StoreException} when the database cannot be read.
   */
  public OptionalLong newestMillis() {
    long[] newest = {Long.MIN_VALUE};
    database.read(
        connection -> {
          Chunks chunks = new Chunks(connection, database.file());
          try (PreparedStatement select =
                  connection.prepareStatement("SELECT room, MAX(first) FROM chunk GROUP BY room");
              ResultSet row = select.executeQuery()) {
            while (row.next()) {
              chunks.forEach(
                  row.getLong(1),
                  row.getLong(2),
                  row.getLong(2) + 1,
                  (chunk, runs) ->
                      runs.forEach(run -> newest[0] = Math.max(newest[0], run.lastMillis())));
            }
          }
          return newest;
        });
    return newest[0] == Long.MIN_VALUE ? OptionalLong.empty() : OptionalLong.of(newest[0]);
  }

  /** A lot's places are asked for often, and most of them never saw a probe. */
  private boolean isOnDisk(String room) {
    FileTime changed = StoreFiles.changed(database.file());
    OnDisk now = onDisk;
    if (now == null || !now.changed.equals(changed)) {
      now = new OnDisk(changed, database.read(RoomIds::names));
      onDisk = now;
    }
    return now.rooms.contains(room);
  }

  private int read(
      Connection connection, String room, long from, long to, KeptDays known, SampleDays days)
      throws SQLException {
    Chunks chunks = new Chunks(connection, database.file());
    List<Chunks.Outline> outlines = chunks.outlines(RoomIds.find(connection, room), from, to);
    int next = 0;
    while (next < outlines.size()) {
      Chunks.Outline begin = outlines.get(next);
      List<Run> found = known.find(begin);
      next++;
      if (found != null) {
        days.add(begin, found);
        continue;
      }
      while (next < outlines.size() && known.find(outlines.get(next)) == null) {
        next++;
      }
      chunks.forEach(
          begin.room(),
          begin.first(),
          outlines.get(next - 1).first() + 1,
          (chunk, runs) -> {
            known.offer(chunk, runs);
            days.add(chunk, runs);
          });
    }
    return outlines.size();
  }

  /** What is kept is good until a day is rewritten; a reader of before fills what is dropped. */
  private KeptDays keptDays() {
    long rewrites = log.rewrites();
    Kept now = kept;
    KeptDays days = now.days.get();
    if (days == null || now.rewrites != rewrites) {
      days = new KeptDays();
      kept = new Kept(rewrites, new SoftReference<>(days));
    }
    return days;
  }
}
