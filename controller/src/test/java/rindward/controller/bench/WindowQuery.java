package rindward.controller.bench;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import rindward.controller.crop.Limits;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.BoundedTotal;

/**
 * The ledger's question as one window query over a table of rows {@code sample(room, at,
 * temperature, humidity)}: seconds and thousandths, null where not measured.
 */
final class WindowQuery {
  private final String sql;

  /**
   * @param least what the dialect calls the lesser of two values
   */
  WindowQuery(String least) {
    StringBuilder query = new StringBuilder("WITH held AS (SELECT temperature t, humidity h, ");
    query.append(
        "%s(lead(\"at\", 1, %d) OVER (ORDER BY \"at\") - \"at\", %d) s FROM sample"
            .formatted(least, Season.TO_SECOND, Season.HOLD_SECONDS));
    query.append(
        " WHERE room = 1 AND \"at\" >= %d AND \"at\" < %d) SELECT sum(0)"
            .formatted(Season.FROM_SECOND, Season.TO_SECOND));
    Limits t = Season.RANGE.temperature();
    Limits h = Season.RANGE.humidity();
    int dt = Season.ACCURACY.temperatureMilliC();
    int dh = Season.ACCURACY.humidityMilliPct();
    for (int e = -1; e <= 1; e++) {
      add(
          query,
          "t >= %d AND t <= %d AND h >= %d AND h <= %d"
              .formatted(t.low() - e * dt, t.high() + e * dt, h.low() - e * dh, h.high() + e * dh));
      add(query, "t < " + (t.low() + e * dt));
      add(query, "t > " + (t.high() - e * dt));
      add(query, "h < " + (h.low() + e * dh));
      add(query, "h > " + (h.high() - e * dh));
    }
    add(
        query,
        "t < %d OR t > %d OR h < %d OR h > %d".formatted(t.low(), t.high(), h.low(), h.high()));
    sql = query.append(" FROM held").toString();
  }

  Account ask(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      row.next();
      long elapsed = 1000 * (Season.TO_SECOND - Season.FROM_SECOND);
      long outOfRange = 1000 * row.getLong(17);
      BoundedTotal inRange = tally(row, 2);
      return new Account(
          elapsed,
          elapsed - inRange.measured() - outOfRange,
          inRange,
          tally(row, 3),
          tally(row, 4),
          tally(row, 5),
          tally(row, 6));
    }
  }

  private static void add(StringBuilder query, String condition) {
    query.append(", sum(CASE WHEN ").append(condition).append(" THEN s ELSE 0 END)");
  }

  private static BoundedTotal tally(ResultSet row, int column) throws SQLException {
    return new BoundedTotal(
        1000 * row.getLong(column),
        1000 * row.getLong(column + 5),
        1000 * row.getLong(column + 10));
  }
}
