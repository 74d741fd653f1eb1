package rindward.controller.store.samples;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import rindward.controller.ledger.Run;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoreTrouble;

/**
 * The table of chunks. Two things always hold: a chunk stays within one UTC day, and chunks of a
 * room do not overlap. So a day is its chunks in order, and a finished day is one chunk.
 */
final class Chunks {
  /**
   * Has no upper bound on purpose. Where SQLite itself looks for the end of a stretch of this
   * table, it brings each chunk into memory to compare its key: that was half of what reading a
   * season cost. In order of their firsts, whoever reads the rows knows where to stop.
   */
  private static final String FROM = " FROM chunk WHERE first >= ? AND room = ? ORDER BY first";

  private final Connection connection;
  private final Path file;

  /** For use within one transaction; {@code file} is named when a chunk turns out damaged. */
  Chunks(Connection connection, Path file) {
    this.connection = connection;
    this.file = file;
  }

  /** A room's UTC day, counted from 1970. */
  record RoomDay(long room, long day) {}

  /** What can be told of a chunk without reading its samples. */
  record Outline(long room, long first, int bytes) {}

  /** What is done with a chunk as it is read. */
  @FunctionalInterface
  interface Visit {
    void chunk(Outline chunk, List<Run> runs);
  }

  /** Returns the outlines of the chunks that begin at {@code from <= first < to}, in order. */
  List<Outline> outlines(long room, long from, long to) throws SQLException {
    List<Outline> outlines = new ArrayList<>();
    try (PreparedStatement select =
        connection.prepareStatement("SELECT first, length(samples)" + FROM)) {
      select.setLong(1, from);
      select.setLong(2, room);
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next() && rows.getLong(1) < to) {
          outlines.add(new Outline(room, rows.getLong(1), rows.getInt(2)));
        }
      }
    }
    return outlines;
  }

  /** Hands over the chunks that begin at {@code from <= first < to}, epoch seconds, in order. */
  void forEach(long room, long from, long to, Visit visit) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement("SELECT first, samples" + FROM)) {
      select.setLong(1, from);
      select.setLong(2, room);
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next() && rows.getLong(1) < to) {
          hand(room, rows, visit);
        }
      }
    }
  }

  /**
   * Appends samples of one room and one UTC day. Where they run into what is there already, for the
   * clock was set back, the day is rewritten, and of two samples of one second the new one counts.
   *
   * @return whether the day was rewritten
   */
  boolean append(long room, List<Run> runs) throws SQLException {
    long first = Math.floorDiv(runs.get(0).startMillis(), 1000);
    long last = Math.floorDiv(runs.get(runs.size() - 1).lastMillis(), 1000);
    long day = Samples.dayOf(first);
    List<Run> before = new ArrayList<>();
    newest(room, day * Samples.DAY_SECONDS, last + 1, (chunk, found) -> before.addAll(found));
    if (before.isEmpty() || before.get(before.size() - 1).lastMillis() < 1000 * first) {
      insert(room, first, runs);
      return false;
    }
    rewrite(new RoomDay(room, day), runs);
    return true;
  }

  /** Makes one chunk of all chunks of a day, with {@code added} samples among them. */
  void rewrite(RoomDay roomDay, List<Run> added) throws SQLException {
    long midnight = roomDay.day() * Samples.DAY_SECONDS;
    long nextMidnight = midnight + Samples.DAY_SECONDS;
    Samples samples = new Samples();
    forEach(roomDay.room(), midnight, nextMidnight, (chunk, runs) -> runs.forEach(samples::add));
    added.forEach(samples::add);
    try (PreparedStatement delete =
        connection.prepareStatement(
            "DELETE FROM chunk WHERE first >= ? AND first < ? AND room = ?")) {
      delete.setLong(1, midnight);
      delete.setLong(2, nextMidnight);
      delete.setLong(3, roomDay.room());
      delete.executeUpdate();
    }
    List<Run> runs = samples.runs();
    insert(roomDay.room(), Math.floorDiv(runs.get(0).startMillis(), 1000), runs);
  }

  /** Returns the days that ended before {@code day} and are still in several chunks. */
  List<RoomDay> unfinishedBefore(long day) throws SQLException {
    List<RoomDay> unfinished = new ArrayList<>();
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT room, first / 86400 AS day FROM chunk WHERE first >= 0 AND first < ?"
                + " GROUP BY room, day HAVING count(*) > 1")) {
      select.setLong(1, day * Samples.DAY_SECONDS);
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          unfinished.add(new RoomDay(rows.getLong(1), rows.getLong(2)));
        }
      }
    }
    return unfinished;
  }

  private void insert(long room, long first, List<Run> runs) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO chunk (first, room, samples) VALUES (?, ?, ?)")) {
      insert.setLong(1, first);
      insert.setLong(2, room);
      insert.setBytes(3, ChunkCodec.encode(first, runs));
      insert.executeUpdate();
    }
  }

  /** Hands over the last chunk that begins at {@code from <= first < to}, if there is one. */
  private void newest(long room, long from, long to, Visit visit) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT first, samples FROM chunk WHERE first >= ? AND first < ? AND room = ?"
                + " ORDER BY first DESC LIMIT 1")) {
      select.setLong(1, from);
      select.setLong(2, to);
      select.setLong(3, room);
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          hand(room, rows, visit);
        }
      }
    }
  }

  private void hand(long room, ResultSet row, Visit visit) throws SQLException {
    long first = row.getLong(1);
    byte[] samples = row.getBytes(2);
    visit.chunk(new Outline(room, first, samples.length), decode(first, samples));
  }

  private List<Run> decode(long first, byte[] samples) {
    try {
      return ChunkCodec.decode(first, samples);
    } catch (IllegalArgumentException e) {
      throw StoreException.of(file, StoreTrouble.DAMAGED, e);
    }
  }
}
