package rindward.controller.settings;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.hardware.OutputKind;

/** Reads the table of alarms that comes with Rindward: every kind once, and nothing else. */
public final class AlarmTableReader {
  private static final String FILE = "alarms.toml";
  private static final String RESOURCE = "/rindward/controller/alarm/" + FILE;
  private static final Kind<Duration> DELAY = Kind.duration(Duration.ZERO, Duration.ofDays(1));
  private static final Kind<Integer> DEADBAND = Kind.thousandths(0, 10_000);
  private static final Kind<AlarmKind> KIND = Kind.choice(AlarmKind.class);

  private AlarmTableReader() {}

  /**
   * Returns the table in the jar.
   *
   * @throws IllegalStateException if it has problems, which only a broken build can have
   */
  public static AlarmTable builtIn() {
    Problems problems = new Problems();
    Optional<AlarmTable> table = read(FILE, JarText.of(RESOURCE), problems);
    return table.orElseThrow(
        () -> new IllegalStateException("the table of alarms has problems: " + problems.list()));
  }

  /** Returns the table in {@code text}; empty with problems. */
  static Optional<AlarmTable> read(String file, String text, Problems problems) {
    Map<AlarmKind, AlarmRow> rows = new EnumMap<>(AlarmKind.class);
    TableReader.of(file, text, problems)
        .ifPresent(
            top -> {
              for (AlarmKind kind : AlarmKind.values()) {
                String key = Kind.word(kind);
                top.table(key)
                    .ifPresentOrElse(
                        table -> rows.put(kind, row(kind, table)),
                        () -> top.missing(key, "it must be a table"));
              }
              top.rejectUnknown();
            });
    return problems.isEmpty() ? Optional.of(new AlarmTable(rows)) : Optional.empty();
  }

  private static AlarmRow row(AlarmKind kind, TableReader table) {
    AlarmRow row =
        new AlarmRow(
            kind,
            table.required("name", Kind.TEXT),
            table.required("priority", Kind.choice(Priority.class)),
            table.required("on-delay", DELAY).toSeconds(),
            table.required("off-delay", DELAY).toSeconds(),
            table.optional("deadband", DEADBAND, 0),
            table.optional("latching", Kind.FLAG, false),
            table.optional("quiet-during-work", Kind.FLAG, false),
            suppressed(table),
            table.required("cause", Kind.TEXT),
            table.required("consequence", Kind.TEXT),
            table.required("action", Kind.TEXT),
            without(table));
    table.rejectUnknown();
    return row;
  }

  private static Set<AlarmKind> suppressed(TableReader table) {
    Set<AlarmKind> kinds = EnumSet.noneOf(AlarmKind.class);
    List<String> unknown = new ArrayList<>();
    for (String word : table.optional("suppresses", Kind.TEXTS, List.of())) {
      Optional<AlarmKind> kind = Optional.ofNullable(KIND.read().apply(word));
      kind.ifPresentOrElse(kinds::add, () -> unknown.add(word));
    }
    unknown.forEach(word -> table.conflict(word, "it must " + KIND.must(), "suppresses"));
    return kinds;
  }

  private static Map<OutputKind, String> without(TableReader table) {
    Map<OutputKind, String> variants = new LinkedHashMap<>();
    table
        .table("without")
        .ifPresent(
            below -> {
              for (OutputKind output : OutputKind.values()) {
                below.find(output.word(), Kind.TEXT).ifPresent(s -> variants.put(output, s));
              }
              below.rejectUnknown();
            });
    return variants;
  }
}
