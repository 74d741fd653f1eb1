package rindward.controller.store.current;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import rindward.controller.store.Database;

/**
 * Where it is remembered which subjects of the journal are over, and what their lots teach. All of
 * it may be deleted at any moment by anybody: it is told anew. For any thread.
 */
final class FinishedTable {
  private final Database database;

  FinishedTable(Database database) {
    this.database = database;
  }

  /**
   * How much is remembered.
   *
   * @param upTo number of the last entry that was looked at
   * @param subjects how many are over
   */
  record Extent(long upTo, long subjects) {
    static final Extent NOTHING = new Extent(0, 0);
  }

  /** Returns how much is remembered by the same program and guide; nothing by others. */
  Extent extent(String basis) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT entry, (SELECT count(*) FROM finished) FROM finished_up_to"
                      + " WHERE basis = ?")) {
            select.setString(1, basis);
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? new Extent(row.getLong(1), row.getLong(2)) : Extent.NOTHING;
            }
          }
        });
  }

  /** Forgets everything. */
  void forget() {
    database.write(
        connection -> {
          for (String table : List.of("finished", "served", "finished_up_to")) {
            update(connection, "DELETE FROM " + table);
          }
          return 0;
        });
  }

  /** Forgets what lots teach: the same air is to be seen otherwise. */
  void forgetLessons() {
    database.write(connection -> update(connection, "UPDATE finished SET taught = NULL"));
  }

  /** Returns every subject of the journal that is not remembered as over. */
  List<String> unfinished() {
    return texts("SELECT DISTINCT subject FROM entry EXCEPT SELECT subject FROM finished");
  }

  /** Returns every place in which a lot lay that is over. */
  Set<String> places() {
    Set<String> places = new TreeSet<>();
    texts("SELECT DISTINCT places FROM finished")
        .forEach(lines -> lines.lines().forEach(places::add));
    return places;
  }

  /** Hands over each lot with a session in which it was served. */
  void eachServing(BiConsumer<String, String> visit) {
    database.read(
        connection -> {
          try (PreparedStatement select =
                  connection.prepareStatement("SELECT lot, session FROM served");
              ResultSet rows = select.executeQuery()) {
            int count = 0;
            for (; rows.next(); count++) {
              visit.accept(rows.getString(1), rows.getString(2));
            }
            return count;
          }
        });
  }

  /**
   * Returns the lots of a variety that are over, each with what it teaches as far as that is known.
   */
  Map<String, @Nullable String> lessons(String crop, String variety) {
    return database.read(
        connection -> {
          Map<String, @Nullable String> lessons = new LinkedHashMap<>();
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT subject, taught FROM finished WHERE crop = ? AND variety = ?")) {
            select.setString(1, crop);
            select.setString(2, variety);
            try (ResultSet rows = select.executeQuery()) {
              while (rows.next()) {
                lessons.put(rows.getString(1), rows.getString(2));
              }
            }
          }
          return lessons;
        });
  }

  /** Remembers what lots teach. */
  void teach(Map<String, String> lessons) {
    database.write(
        connection -> {
          try (PreparedStatement set =
              connection.prepareStatement("UPDATE finished SET taught = ? WHERE subject = ?")) {
            for (Map.Entry<String, String> lesson : lessons.entrySet()) {
              set.setString(1, lesson.getValue());
              set.setString(2, lesson.getKey());
              set.executeUpdate();
            }
          }
          return lessons.size();
        });
  }

  /**
   * Remembers what has changed, all of it or none.
   *
   * @param over what is over now
   * @param again what is not over any more
   * @param servings what else was served where, of each lot in which sessions
   * @param upTo number of the last entry that was looked at
   */
  void remember(
      Collection<FinishedSubject> over,
      Collection<String> again,
      Map<String, Set<String>> servings,
      long upTo,
      String basis) {
    database.write(
        connection -> {
          insert(connection, over);
          insert(connection, servings);
          try (PreparedStatement delete =
              connection.prepareStatement("DELETE FROM finished WHERE subject = ?")) {
            for (String subject : again) {
              delete.setString(1, subject);
              delete.executeUpdate();
            }
          }
          update(connection, "DELETE FROM finished_up_to");
          try (PreparedStatement mark =
              connection.prepareStatement("INSERT INTO finished_up_to VALUES (?, ?)")) {
            mark.setLong(1, upTo);
            mark.setString(2, basis);
            return mark.executeUpdate();
          }
        });
  }

  private static void insert(Connection connection, Collection<FinishedSubject> over)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT OR REPLACE INTO finished VALUES (?, ?, ?, ?, NULL)")) {
      for (FinishedSubject each : over) {
        insert.setString(1, each.subject());
        insert.setString(2, each.crop());
        insert.setString(3, each.variety());
        insert.setString(4, String.join("\n", each.places()));
        insert.executeUpdate();
      }
    }
  }

  private static void insert(Connection connection, Map<String, Set<String>> servings)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT OR IGNORE INTO served VALUES (?, ?)")) {
      for (Map.Entry<String, Set<String>> lot : servings.entrySet()) {
        for (String session : lot.getValue()) {
          insert.setString(1, lot.getKey());
          insert.setString(2, session);
          insert.executeUpdate();
        }
      }
    }
  }

  private List<String> texts(String query) {
    return database.read(
        connection -> {
          List<String> texts = new ArrayList<>();
          try (PreparedStatement select = connection.prepareStatement(query);
              ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
              texts.add(rows.getString(1));
            }
          }
          return texts;
        });
  }

  private static int update(Connection connection, String change) throws SQLException {
    try (PreparedStatement sql = connection.prepareStatement(change)) {
      return sql.executeUpdate();
    }
  }
}
