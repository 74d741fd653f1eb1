package rindward.controller.exchange;

import java.time.Instant;
import java.util.Locale;
import java.util.function.UnaryOperator;
import rindward.controller.crop.Days;
import rindward.controller.crop.Harm;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;
import rindward.controller.tasting.Use;

/** Reads one row of a file of lots as the entry it stands for. */
final class EntryFromRow {
  private final UnaryOperator<String> cropKey;

  /**
   * @param cropKey from a name of a type, as people call it, to its key in the crop guide
   */
  EntryFromRow(UnaryOperator<String> cropKey) {
    this.cropKey = cropKey;
  }

  Entry read(EntryRow row) throws MalformedRow {
    String lot = row.text("lot").strip().toUpperCase(Locale.ROOT);
    Instant at = row.at();
    String kind = row.text("kind").strip();
    return switch (kind.isEmpty() ? "harvested" : kind) {
      case "planted" -> planted(row, lot, at);
      case "harvested" -> harvested(row, lot, at);
      case "moved" -> new Moved(lot, row.text("place"), at);
      case "weighed" ->
          new Weighed(
              lot,
              row.textOrNull("fruit"),
              row.whole("count", 1),
              row.whole("weight_g"),
              row.whole("tare_g", 0),
              at);
      case "culled" ->
          new Culled(
              lot, row.whole("count", 1), row.word("cause", Cause.class), row.text("note"), at);
      case "used" -> new Used(lot, row.whole("count", 1), row.word("purpose", Purpose.class), at);
      case "recounted" -> new Recounted(lot, row.whole("count"), at);
      case "reserved" ->
          new Reserved(lot, row.word("purpose", Purpose.class), row.whole("count"), at);
      case "ripeness" -> ripeness(row, lot, at);
      case "frost" ->
          new FrostNoted(
              lot,
              row.thousandths("minimum_c"),
              row.whole("minutes", 0),
              row.yes("covered"),
              row.yes("water_soaked"),
              at);
      case "kitchen-taste" -> taste(row, lot, at);
      case "field-day" ->
          new FieldDayNoted(
              lot, row.word("what", FieldDay.class), row.day("day"), row.whole("count", 0), at);
      case "off-type" -> new OffTypeNoted(lot, row.text("note"), at);
      case "noted" -> new Noted(lot, row.text("note"), at);
      case "attested" -> new Attested(lot, row.text("note"), at);
      case "misfit-accepted" -> new MisfitAccepted(lot, row.text("place"), at);
      default ->
          throw row.wrong(
              "kind",
              "it must be planted, harvested, moved, weighed, culled, used, recounted, reserved,"
                  + " ripeness, frost, kitchen-taste, field-day, off-type, noted, attested or"
                  + " misfit-accepted");
    };
  }

  private Planted planted(EntryRow row, String lot, Instant at) throws MalformedRow {
    return new Planted(
        lot,
        row.text("plot"),
        cropKey.apply(row.text("crop").strip()),
        row.text("variety"),
        row.yes("check"),
        row.whole("plants", 1),
        row.dayOrNull("sown"),
        row.dayOrNull("transplanted"),
        row.wholeOrNull("expected_days"),
        at);
  }

  private Harvested harvested(EntryRow row, String lot, Instant at) throws MalformedRow {
    return new Harvested(
        lot,
        cropKey.apply(row.text("crop").strip()),
        row.text("variety"),
        row.whole("count"),
        row.text("place"),
        at,
        row.wordOrNull("grade", Grade.class),
        row.wholeOrNull("weight_g"),
        row.textOrNull("plot"));
  }

  private static KitchenTasted taste(EntryRow row, String lot, Instant at) throws MalformedRow {
    CutFruit cut =
        new CutFruit(
            row.wordOrNull("seeds", Seeds.class),
            row.wholeOrNull("flesh_mm"),
            row.text("colour"),
            row.yes("free_liquid"),
            row.yes("rot_inside"),
            row.thousandthsOrNull("dry_matter_pct"),
            row.thousandthsOrNull("soluble_solids_pct"),
            row.words("found", Harm.class));
    return new KitchenTasted(
        lot,
        row.textOrNull("fruit"),
        cut,
        row.wholeOrNull("liking"),
        row.wholeOrNull("moistness"),
        row.words("good_for", Use.class),
        row.text("note"),
        at);
  }

  private static RipenessNoted ripeness(EntryRow row, String lot, Instant at) throws MalformedRow {
    RipenessSign sign = row.word("sign", RipenessSign.class);
    Days usual = sign.usual().orElse(null);
    int low = usual == null ? row.whole("days_low") : row.whole("days_low", usual.low());
    int high = usual == null ? row.whole("days_high", low) : row.whole("days_high", usual.high());
    return new RipenessNoted(lot, sign, low, high, row.whole("count", 0), at);
  }
}
