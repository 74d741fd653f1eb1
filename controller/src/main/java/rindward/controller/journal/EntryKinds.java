package rindward.controller.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rindward.controller.crop.Nearest;

/** Every kind of entry there is, and what may be done with any of them alike. */
public final class EntryKinds {
  /** All, those that a file of lots may hold first. */
  public static final List<EntryKind<?>> ALL =
      List.of(
          Planted.KIND,
          Harvested.KIND,
          Moved.KIND,
          Weighed.KIND,
          Culled.KIND,
          Used.KIND,
          Recounted.KIND,
          Reserved.KIND,
          RipenessNoted.KIND,
          FrostNoted.KIND,
          KitchenTasted.KIND,
          FieldDayNoted.KIND,
          OffTypeNoted.KIND,
          Noted.KIND,
          Attested.KIND,
          MisfitAccepted.KIND,
          GerminationTested.KIND,
          HarmLifted.KIND,
          Withdrawn.KIND,
          Corrected.KIND,
          SessionPlanned.KIND,
          SampleCooked.KIND,
          Scored.KIND,
          UsesTicked.KIND,
          TakenBack.KIND,
          SessionClosed.KIND,
          VarietyDecided.KIND,
          AccuracyStated.KIND,
          OutputTried.KIND,
          ProofTried.KIND,
          RoomAsked.KIND,
          SwitchedByHand.KIND,
          LetRun.KIND,
          AlarmAnswered.KIND,
          WorkAnnounced.KIND,
          ProbeCalibrated.KIND);

  /** The columns that files have had since the first version, in their order. */
  private static final List<String> FIRST_COLUMNS =
      List.of(
          "kind",
          "lot",
          "at",
          "crop",
          "variety",
          "plot",
          "check",
          "plants",
          "sown",
          "transplanted",
          "expected_days",
          "count",
          "place",
          "grade",
          "weight_g",
          "tare_g",
          "fruit",
          "cause",
          "purpose",
          "sign",
          "days_low",
          "days_high",
          "what",
          "day",
          "minimum_c",
          "minutes",
          "covered",
          "water_soaked",
          "seeds",
          "liking",
          "moistness",
          "good_for",
          "flesh_mm",
          "colour",
          "free_liquid",
          "rot_inside",
          "dry_matter_pct",
          "soluble_solids_pct",
          "note");

  /** Every column of a file of lots, in the order in which they are written. */
  public static final List<String> COLUMNS = columns();

  private static final Map<String, EntryKind<?>> BY_NAME =
      ALL.stream().collect(Collectors.toMap(EntryKind::name, kind -> kind));
  private static final Map<Class<?>, EntryKind<?>> BY_TYPE =
      ALL.stream().collect(Collectors.toMap(EntryKind::type, kind -> kind));

  private EntryKinds() {}

  /** Returns the newest version that any kind has. */
  public static int newestVersion() {
    return ALL.stream().mapToInt(EntryKind::version).max().orElse(0);
  }

  /** Returns the kind of that name. */
  public static Optional<EntryKind<?>> find(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /**
   * Returns the kind of an entry.
   *
   * @throws IllegalArgumentException for what a newer version wrote, which is of no kind
   */
  @SuppressWarnings("unchecked")
  public static <E extends Entry> EntryKind<E> of(E entry) {
    EntryKind<?> kind = BY_TYPE.get(entry.getClass());
    if (kind == null) {
      throw new IllegalArgumentException("no kind was declared for " + entry);
    }
    return (EntryKind<E>) kind;
  }

  /** Returns an entry as it is written into the journal: names, texts, whole numbers, lists. */
  public static Map<String, Object> plain(Entry entry) {
    return of(entry).plain(entry);
  }

  /**
   * An entry that was read.
   *
   * @param isWhole whether nothing was written that this version has no field for
   */
  public record Read(Entry entry, boolean isWhole) {}

  /**
   * Reads what was written into the journal.
   *
   * @throws IllegalArgumentException if a newer version of this program wrote it
   */
  public static Read read(Map<?, ?> plain) {
    Understanding seen = new Understanding();
    return new Read(read(plain, seen), seen.isWhole());
  }

  static Entry read(Map<?, ?> plain, Understanding seen) {
    EntryKind<?> kind = plain.get("kind") instanceof String name ? BY_NAME.get(name) : null;
    if (kind == null) {
      throw new IllegalArgumentException("kind was '" + plain.get("kind") + "'");
    }
    return kind.fromPlain(plain, seen);
  }

  /** Returns why no such thing can be said, whatever was said before; nothing if it can. */
  public static Optional<String> refusal(Entry entry) {
    return of(entry).refusal(entry);
  }

  /** Returns what an entry says, by column; empty for what has no row. */
  public static Map<String, String> row(Entry entry) {
    if (entry instanceof Corrected corrected) {
      return row(corrected.instead());
    }
    if (entry instanceof NewerEntry newer) {
      return Map.of("kind", NewerEntry.KIND, "note", newer.body());
    }
    Map<String, String> said = of(entry).row(entry);
    Map<String, String> row = new LinkedHashMap<>();
    for (String column : COLUMNS) {
      String text = said.get(column);
      if (text != null) {
        row.put(column, text);
      }
    }
    return row;
  }

  /**
   * Returns what a row says.
   *
   * @throws Misstated if a column does not exist or a field cannot be understood
   */
  public static Entry fromTexts(FieldTexts row) throws Misstated {
    for (String column : row.fields().keySet()) {
      checkColumn(column);
    }
    String name = row.text("kind").strip();
    EntryKind<?> kind = name.isEmpty() ? Harvested.KIND : BY_NAME.get(name);
    if (kind == null || !kind.hasRow()) {
      Field.at().fromRow(row);
      throw Misstated.of("kind", row.text("kind"), "it must be " + listed());
    }
    return kind.fromRow(row);
  }

  /**
   * Returns an entry with some of its fields said otherwise.
   *
   * @param changes by column
   * @throws Misstated if a column does not exist or a field cannot be understood
   */
  public static Entry changed(Entry entry, FieldTexts changes) throws Misstated {
    Map<String, String> fields = new LinkedHashMap<>(row(entry));
    fields.putAll(changes.fields());
    return fromTexts(new FieldTexts(fields, changes.zone(), changes.cropKey()));
  }

  /** Refuses the name of a column that does not exist. */
  public static void checkColumn(String column) throws Misstated {
    if (!COLUMNS.contains(column)) {
      throw Misstated.of(
          "column",
          column,
          "it must be one of "
              + String.join(", ", COLUMNS)
              + Nearest.to(column, COLUMNS)
                  .map(near -> "; did you mean '" + near + "'?")
                  .orElse(""));
    }
  }

  private static String listed() {
    List<String> names = ALL.stream().filter(EntryKind::hasRow).map(EntryKind::name).toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(FIRST_COLUMNS);
    ALL.stream()
        .filter(EntryKind::hasRow)
        .flatMap(kind -> kind.fields().stream())
        .map(Field::column)
        .filter(column -> !columns.contains(column))
        .distinct()
        .forEach(columns::add);
    return List.copyOf(columns);
  }
}
