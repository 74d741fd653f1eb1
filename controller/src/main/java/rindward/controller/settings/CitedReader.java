package rindward.controller.settings;

import java.util.List;
import java.util.Optional;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Sources;

/**
 * Reads a table whose numbers carry sources, written {@code key = { value = 10, source = ["X"] }}.
 * In the grower's settings a bare {@code key = 10} will do: its source is the grower. A number that
 * the table does not name is taken over from a type it is based on. For one thread.
 *
 * @param table the table itself, for everything that needs no source
 * @param sources what may be named
 * @param own whether this is the grower's own file
 */
record CitedReader(TableReader table, Sources sources, boolean own) {

  /** Returns the table below {@code key}, if the file has it. */
  Optional<CitedReader> below(String key) {
    return table.table(key).map(this::with);
  }

  /** Returns the list of tables below {@code key}. */
  List<CitedReader> list(String key) {
    return table.list(key).stream().map(this::with).toList();
  }

  /** Returns a number that must be here or in {@code base}. */
  <T> Cited<T> required(String key, Kind<T> kind, Optional<Cited<T>> base) {
    return optional(key, kind, base)
        .orElseGet(
            () -> {
              if (!table.has(key)) {
                table.missing(key, "it must " + kind.must());
              }
              return new Cited<>(kind.standIn(), List.of(Sources.FROM_MEMORY));
            });
  }

  /** Returns a number, that of {@code base} if it is not here; empty if it is nowhere. */
  <T> Optional<Cited<T>> optional(String key, Kind<T> kind, Optional<Cited<T>> base) {
    if (!table.has(key)) {
      return base;
    }
    if (table.hasTable(key)) {
      return below(key)
          .map(
              cited -> {
                T value = cited.table.required("value", kind);
                return cited.cite(value);
              });
    }
    if (!own) {
      table.refuse(key, "it must name its source: { value = ..., source = [\"...\"] }");
      return Optional.empty();
    }
    return table.find(key, kind).map(value -> new Cited<>(value, List.of(Sources.OWN)));
  }

  /** Returns a text without a source that must be here or in {@code base}. */
  <T> T plain(String key, Kind<T> kind, Optional<T> base) {
    return base.isPresent() && !table.has(key) ? base.get() : table.required(key, kind);
  }

  /** Returns {@code value} with the sources this table names, and rejects what else it holds. */
  <T> Cited<T> cite(T value) {
    List<String> named =
        table.optional("source", Kind.TEXTS, List.of()).stream().filter(this::known).toList();
    if (named.isEmpty()) {
      if (!own && !table.has("source")) {
        table.missing("source", "it must name at least one key of [sources]");
      }
      named = List.of(own ? Sources.OWN : Sources.FROM_MEMORY);
    }
    table.rejectUnknown();
    return new Cited<>(value, named);
  }

  private boolean known(String key) {
    boolean known = sources.title(key).isPresent() && (own || !key.equals(Sources.OWN));
    if (!known) {
      table.problem(
          "source",
          table.path("source")
              + " named '"
              + key
              + "' but it must be a key of [sources]"
              + sources.nearest(key).map(near -> "; did you mean '" + near + "'?").orElse(""));
    }
    return known;
  }

  private CitedReader with(TableReader below) {
    return new CitedReader(below, sources, own);
  }
}
