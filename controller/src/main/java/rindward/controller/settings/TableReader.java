package rindward.controller.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import rindward.controller.crop.Nearest;

/**
 * Reads one table of a TOML file strictly. Ask for every key the table may have, then call {@link
 * #rejectUnknown}: what was never asked for is a slip of the pen and is told. A problem never
 * throws; it is added to {@link Problems}, and a stand-in comes back so that the rest is read too.
 * For one thread.
 */
final class TableReader {
  private final TomlTable table;
  private final String path;
  private final String file;
  private final TomlPosition position;
  private final Problems problems;
  private final Set<String> asked = new TreeSet<>();

  private TableReader(
      TomlTable table, String path, String file, TomlPosition position, Problems problems) {
    this.table = table;
    this.path = path;
    this.file = file;
    this.position = position;
    this.problems = problems;
  }

  /**
   * Reads a whole file. Where it is not TOML, every such place is a problem and nothing comes back.
   *
   * @param file name used in the sentences
   * @param text what the file holds
   */
  static Optional<TableReader> of(String file, String text, Problems problems) {
    TomlParseResult result = Toml.parse(text);
    result
        .errors()
        .forEach(
            error ->
                problems.add(
                    new Problem(
                        file,
                        error.position().line(),
                        error.position().column(),
                        "this is not TOML: " + error.getMessage())));
    return result.hasErrors()
        ? Optional.empty()
        : Optional.of(new TableReader(result, "", file, TomlPosition.positionAt(1, 1), problems));
  }

  /** Returns the path of a key of this table from the top of the file, for example "room.cure". */
  String path(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** Returns the last part of this table's own path. */
  String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** Returns a name as it is written in a file: one with a space in it stands in quotes. */
  static String asKey(String name) {
    return name.matches("[A-Za-z0-9_-]+")
        ? name
        : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** Tells whether the file has this key; asking makes the key a known one. */
  boolean has(String key) {
    asked.add(key);
    return table.contains(List.of(key));
  }

  /** Returns the value of a key that must be there. */
  <T> T required(String key, Kind<T> kind) {
    if (!has(key)) {
      missing(key, "it must " + kind.must());
      return kind.standIn();
    }
    return find(key, kind).orElse(kind.standIn());
  }

  /** Returns the value of a key, or {@code fallback} where the file does not have it. */
  <T> T optional(String key, Kind<T> kind, T fallback) {
    return find(key, kind).orElse(fallback);
  }

  /** Returns the value of a key; empty where the file does not have it or it is wrong. */
  <T> Optional<T> find(String key, Kind<T> kind) {
    if (!has(key)) {
      return Optional.empty();
    }
    @Nullable T value = kind.read().apply(value(key));
    if (value == null) {
      refuse(key, "it must " + kind.must());
    }
    return Optional.ofNullable(value);
  }

  /** Returns a table below this one; empty where the file does not have it or it is no table. */
  Optional<TableReader> table(String key) {
    if (!has(key)) {
      return Optional.empty();
    }
    if (value(key) instanceof TomlTable below) {
      return Optional.of(new TableReader(below, path(key), file, at(key), problems));
    }
    refuse(key, "it must be a table");
    return Optional.empty();
  }

  /** Tells whether the file has this key and a table stands there. */
  boolean hasTable(String key) {
    return has(key) && value(key) instanceof TomlTable;
  }

  /** Returns every key of this table as a table, in the file's order; makes all keys known. */
  Map<String, TableReader> tables() {
    Map<String, TableReader> all = new LinkedHashMap<>();
    table.keySet().stream()
        .sorted(
            Comparator.comparing((String key) -> at(key).line())
                .thenComparing(key -> at(key).column()))
        .forEach(key -> table(key).ifPresent(below -> all.put(key, below)));
    return all;
  }

  /**
   * Returns a list of tables, written {@code [[key]]} or {@code key = [{...}, {...}]}; empty where
   * the file does not have it. Their paths are {@code key[1]}, {@code key[2]} and so on.
   */
  List<TableReader> list(String key) {
    List<TableReader> all = new ArrayList<>();
    if (!has(key)) {
      return all;
    }
    if (value(key) instanceof TomlArray array
        && IntStream.range(0, array.size()).allMatch(i -> array.get(i) instanceof TomlTable)) {
      for (int i = 0; i < array.size(); i++) {
        String below = path(key) + "[" + (i + 1) + "]";
        all.add(
            new TableReader(array.getTable(i), below, file, array.inputPositionOf(i), problems));
      }
    } else {
      refuse(key, "it must be a list of tables");
    }
    return all;
  }

  /** Returns the keys the file has here; asks for none of them. */
  Set<String> keys() {
    return table.keySet();
  }

  /** Returns where this table's problems go. */
  Problems problems() {
    return problems;
  }

  /** Adds the problem that a key is not there; {@code must} ends the sentence. */
  void missing(String key, String must) {
    tell(position, path(key) + " is missing but " + must);
  }

  /** Adds the problem that a key's value will not do; {@code must} ends the sentence. */
  void refuse(String key, String must) {
    String was = table.contains(List.of(key)) ? shown(value(key)) : "missing";
    tell(at(key), path(key) + " was '" + was + "' but " + must);
  }

  /**
   * Adds the problem that a value, perhaps not of this file, does not go with others. The place is
   * that of the longest part of the way that the file has.
   *
   * @param was the value as a person writes it
   * @param must end of the sentence
   * @param way keys from this table down to the value; none for the table itself
   */
  void conflict(String was, String must, String... way) {
    List<String> keys = List.of(way);
    TomlPosition where = position;
    for (int depth = 1; depth <= keys.size() && table.contains(keys.subList(0, depth)); depth++) {
      where = Objects.requireNonNullElse(table.inputPositionOf(keys.subList(0, depth)), where);
    }
    String name = keys.isEmpty() ? path : path(String.join(".", keys));
    tell(where, name + " was '" + was + "' but " + must);
  }

  /** Adds a problem of its own wording at a key, or at the table where the key is not there. */
  void problem(String key, String sentence) {
    tell(at(key), sentence);
  }

  /** Adds a problem for each key that nobody asked for. Call it last. */
  void rejectUnknown() {
    for (String key : table.keySet()) {
      if (!asked.contains(key)) {
        tell(
            at(key),
            path(key)
                + " is not a key known here"
                + Nearest.to(key, asked).map(near -> "; did you mean '" + near + "'?").orElse(""));
      }
    }
  }

  private void tell(TomlPosition where, String sentence) {
    problems.add(new Problem(file, where.line(), where.column(), sentence));
  }

  private TomlPosition at(String key) {
    @Nullable TomlPosition own = table.inputPositionOf(List.of(key));
    return own == null ? position : own;
  }

  private Object value(String key) {
    Object value = table.get(List.of(key));
    if (value == null) {
      throw new IllegalStateException(path(key) + " was read although the file does not have it");
    }
    return value;
  }

  private static String shown(Object value) {
    if (value instanceof TomlArray array) {
      return array.toList().stream()
          .map(one -> one instanceof String ? "\"" + one + "\"" : shown(one))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return value instanceof TomlTable ? "a table" : value.toString();
  }
}
