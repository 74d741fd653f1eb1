package rindward.controller.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * One kind of entry, declared once: its name, its version, its fields and who may say it. What is
 * written into the journal, a row of a file of lots, what the API takes and how a wrong field is
 * refused all follow from here.
 *
 * <p>Names and words are on disks for ten years: a kind or a field may be added, none renamed. A
 * field whose loss would change the meaning of the rest raises the version; then a program that
 * knows only the version before keeps the entry and draws no conclusion from it.
 *
 * @param <E> the entry
 */
public final class EntryKind<E extends Entry> {
  /** What stands in the journal beside the fields. */
  static final Set<String> MARKS = Set.of("kind", "version");

  private final String name;
  private final Class<E> type;
  private final Parts<E> parts;
  private final List<Function<E, Optional<String>>> rules = new ArrayList<>();
  private int version = 1;
  private Predicate<E> isNewer = entry -> false;
  private Speaker speaker = Speaker.HELPER;
  private UnaryOperator<FieldTexts> completing = row -> row;

  private EntryKind(String name, Class<E> type, Parts<E> parts) {
    this.name = name;
    this.type = type;
    this.parts = parts;
  }

  static <E extends Entry> EntryKind<E> of(String name, Class<E> type, Field<?>... fields) {
    return new EntryKind<>(name, type, Parts.of(type, fields));
  }

  /**
   * From this version on it may mean something else; only an entry that does is written with it, so
   * that a program of before still understands the others.
   */
  EntryKind<E> version(int newer, Predicate<E> meansElse) {
    version = newer;
    isNewer = meansElse;
    return this;
  }

  /** Who may say it; a helper if this is not said. */
  EntryKind<E> saidBy(Speaker least) {
    speaker = least;
    return this;
  }

  /** Refuses what its fields cannot be together. */
  EntryKind<E> where(Function<E, Optional<String>> rule) {
    rules.add(rule);
    return this;
  }

  /** Says what a row leaves out and means all the same. */
  EntryKind<E> completing(UnaryOperator<FieldTexts> more) {
    completing = more;
    return this;
  }

  /** Names that were written once and say nothing. */
  EntryKind<E> dropping(String... names) {
    parts.dropping(names);
    return this;
  }

  /** Returns what the journal and files call it. */
  public String name() {
    return name;
  }

  /** Returns the newest version that this program writes and reads. */
  public int version() {
    return version;
  }

  /** Returns who may say it at least. */
  public Speaker speaker() {
    return speaker;
  }

  /** Returns the class of its entries. */
  public Class<E> type() {
    return type;
  }

  /** Tells whether it is said of one lot. */
  public boolean isOfLot() {
    return OfLot.class.isAssignableFrom(type);
  }

  /** Tells whether it can be said in a row of a file of lots, and so from the page of lots. */
  public boolean hasRow() {
    return isOfLot() && parts.fields().stream().allMatch(Field::isInRow);
  }

  /** Returns what each column of its row must be, in words; the lot and the time apart. */
  public Map<String, String> columns() {
    Map<String, String> columns = new LinkedHashMap<>();
    for (Field<?> field : fields()) {
      if (!field.name().equals("lot") && !field.name().equals("at")) {
        columns.put(field.column(), field.words());
      }
    }
    return columns;
  }

  /** Returns its fields; of fields that have fields of their own, those. */
  public List<Field<?>> fields() {
    return fields(parts);
  }

  private static List<Field<?>> fields(Parts<?> parts) {
    List<Field<?>> all = new ArrayList<>();
    for (Field<?> field : parts.fields()) {
      if (field.form() instanceof Parts<?> inner) {
        all.addAll(fields(inner));
      } else {
        all.add(field);
      }
    }
    return all;
  }

  /** Returns an entry as it is written into the journal. */
  Map<String, Object> plain(E entry) {
    Map<String, Object> plain = new LinkedHashMap<>();
    plain.put("kind", name);
    if (isNewer.test(entry)) {
      plain.put("version", version);
    }
    plain.putAll(parts.plain(entry));
    return plain;
  }

  /**
   * Reads what was written into the journal.
   *
   * @throws IllegalArgumentException if a newer version of this program wrote it
   */
  E fromPlain(Map<?, ?> plain, Understanding seen) {
    if (plain.get("version") instanceof Integer written && written > version) {
      throw new IllegalArgumentException("version of " + name + " was '" + written + "'");
    }
    return parts.fromPlain(plain, seen);
  }

  /** Returns what an entry says by column, those of every kind first; what is unsaid is missing. */
  Map<String, String> row(E entry) {
    Map<String, String> row = new LinkedHashMap<>();
    if (hasRow()) {
      row.put("kind", name);
      parts.toRow(entry, row);
    }
    return row;
  }

  /** Returns what a row says; its kind is this one. */
  E fromRow(FieldTexts row) throws Misstated {
    Field.at().fromRow(row);
    return parts.fromRow(completing.apply(row));
  }

  /** Returns why no such thing can be said, whatever was said before; nothing if it can. */
  Optional<String> refusal(E entry) {
    Optional<String> refusal = parts.refusal(entry);
    for (int i = 0; i < rules.size() && refusal.isEmpty(); i++) {
      refusal = rules.get(i).apply(entry);
    }
    return refusal;
  }

  @Override
  public String toString() {
    return name + Arrays.toString(fields().stream().map(Field::name).toArray());
  }
}
