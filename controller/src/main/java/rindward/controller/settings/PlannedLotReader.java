package rindward.controller.settings;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Optional;
import java.util.Set;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;

/** Reads one {@code [season.<code>]}: a lot that a simulated season plans. */
final class PlannedLotReader {
  private PlannedLotReader() {}

  /** Reads it; empty when anything about it was wrong, which the table's problems then tell. */
  static Optional<PlannedLot> read(TableReader table, Set<String> rooms, CropGuide crops) {
    String crop = table.required("crop", Kind.TEXT);
    Optional<Crop> known = crops.crop(crop);
    if (table.has("crop") && known.isEmpty()) {
      table.refuse(
          "crop",
          "it must be a type of the crop guide"
              + crops.nearest(crop).map(near -> "; did you mean '" + near + "'?").orElse(""));
    }
    int massGrams = table.required("mass_kg", Kind.thousandths(1, 20_000_000));
    Optional<MonthDay> arrives = day(table);
    String room = room(table, table.required("room", Kind.TEXT), "room", rooms);
    Optional<String> then = table.find("then", Kind.TEXT);
    then.ifPresent(t -> room(table, t, "then", rooms));
    table.rejectUnknown();
    return known.isEmpty() || arrives.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PlannedLot(
                table.name(),
                known.get().key(),
                massGrams,
                arrives.get(),
                room,
                then.orElse(null)));
  }

  private static Optional<MonthDay> day(TableReader table) {
    String text = table.required("arrives", Kind.TEXT);
    try {
      return Optional.of(MonthDay.parse("--" + text));
    } catch (DateTimeException e) {
      if (table.has("arrives")) {
        table.refuse("arrives", "it must be a day such as \"09-20\", month first");
      }
      return Optional.empty();
    }
  }

  private static String room(TableReader table, String name, String key, Set<String> rooms) {
    if (table.has(key) && !rooms.contains(name)) {
      table.refuse(
          key, "no room of that name is declared (declared: " + String.join(", ", rooms) + ")");
    }
    return name;
  }
}
