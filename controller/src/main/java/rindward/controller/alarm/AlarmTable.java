package rindward.controller.alarm;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A row for every kind of alarm. Data: it comes from {@code alarms.toml}.
 *
 * @param rows exactly one for each kind
 */
public record AlarmTable(Map<AlarmKind, AlarmRow> rows) {
  public AlarmTable {
    rows = Collections.unmodifiableMap(new EnumMap<>(rows));
    for (AlarmKind kind : AlarmKind.values()) {
      if (!rows.containsKey(kind)) {
        throw new IllegalArgumentException("the table has no row for " + kind);
      }
    }
  }

  /** Returns the row of a kind. */
  public AlarmRow row(AlarmKind kind) {
    AlarmRow row = rows.get(kind);
    if (row == null) {
      throw new IllegalStateException("the table has no row for " + kind);
    }
    return row;
  }
}
