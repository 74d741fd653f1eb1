package rindward.controller.exchange;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.EntryVisitor;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.MisfitAccepted;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Planted;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.Used;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.journal.WorkAnnounced;

/** Writes one entry about a lot as the fields of a row; {@link EntryFromRow} reads it back. */
final class EntryToRow implements EntryVisitor<Map<String, String>> {

  @Override
  public Map<String, String> planted(Planted entry) {
    Map<String, String> row = of("planted", entry);
    put(row, "crop", entry.crop());
    put(row, "variety", entry.variety());
    put(row, "plot", entry.plot());
    put(row, "check", yes(entry.check()));
    put(row, "plants", entry.plants());
    put(row, "sown", entry.sown());
    put(row, "transplanted", entry.transplanted());
    put(row, "expected_days", entry.expectedDays());
    return row;
  }

  @Override
  public Map<String, String> harvested(Harvested entry) {
    Map<String, String> row = of("harvested", entry);
    put(row, "crop", entry.crop());
    put(row, "variety", entry.variety());
    put(row, "plot", entry.plot());
    put(row, "count", entry.count());
    put(row, "place", entry.place());
    put(row, "grade", entry.grade());
    put(row, "weight_g", entry.weightGrams());
    return row;
  }

  @Override
  public Map<String, String> moved(Moved entry) {
    return placed("moved", entry, entry.place());
  }

  @Override
  public Map<String, String> weighed(Weighed entry) {
    Map<String, String> row = counted("weighed", entry, entry.count());
    put(row, "fruit", entry.fruit());
    put(row, "weight_g", entry.grossGrams());
    put(row, "tare_g", entry.tareGrams());
    return row;
  }

  @Override
  public Map<String, String> culled(Culled entry) {
    Map<String, String> row = counted("culled", entry, entry.count());
    put(row, "cause", entry.cause());
    put(row, "note", entry.note());
    return row;
  }

  @Override
  public Map<String, String> used(Used entry) {
    Map<String, String> row = counted("used", entry, entry.count());
    put(row, "purpose", entry.purpose());
    return row;
  }

  @Override
  public Map<String, String> recounted(Recounted entry) {
    return counted("recounted", entry, entry.count());
  }

  @Override
  public Map<String, String> reserved(Reserved entry) {
    Map<String, String> row = counted("reserved", entry, entry.count());
    put(row, "purpose", entry.purpose());
    return row;
  }

  @Override
  public Map<String, String> ripenessNoted(RipenessNoted entry) {
    Map<String, String> row = counted("ripeness", entry, entry.fruits());
    put(row, "sign", entry.sign());
    put(row, "days_low", entry.lowDays());
    put(row, "days_high", entry.highDays());
    return row;
  }

  @Override
  public Map<String, String> frostNoted(FrostNoted entry) {
    Map<String, String> row = of("frost", entry);
    put(row, "minimum_c", thousandths(entry.minimumMilliC()));
    put(row, "minutes", entry.minutes());
    put(row, "covered", yes(entry.covered()));
    put(row, "water_soaked", yes(entry.waterSoaked()));
    return row;
  }

  @Override
  public Map<String, String> kitchenTasted(KitchenTasted entry) {
    Map<String, String> row = of("kitchen-taste", entry);
    put(row, "fruit", entry.fruit());
    put(row, "liking", entry.liking());
    put(row, "moistness", entry.moistness());
    put(
        row,
        "good_for",
        entry.goodFor().stream().map(Enum::toString).collect(Collectors.joining(" ")));
    put(row, "seeds", entry.cut().seeds());
    put(row, "flesh_mm", entry.cut().fleshMm());
    put(row, "colour", entry.cut().colour());
    put(row, "free_liquid", yes(entry.cut().freeLiquid()));
    put(row, "rot_inside", yes(entry.cut().rotInside()));
    put(row, "dry_matter_pct", thousandths(entry.cut().dryMatterMilliPct()));
    put(row, "soluble_solids_pct", thousandths(entry.cut().solubleSolidsMilliPct()));
    put(
        row,
        "found",
        entry.cut().found() == null
            ? null
            : entry.cut().found().stream().map(Enum::toString).collect(Collectors.joining(" ")));
    put(row, "note", entry.word());
    return row;
  }

  @Override
  public Map<String, String> fieldDayNoted(FieldDayNoted entry) {
    Map<String, String> row = counted("field-day", entry, entry.fruits());
    put(row, "what", entry.what());
    put(row, "day", entry.day());
    return row;
  }

  @Override
  public Map<String, String> offTypeNoted(OffTypeNoted entry) {
    return told("off-type", entry, entry.text());
  }

  @Override
  public Map<String, String> noted(Noted entry) {
    return told("noted", entry, entry.text());
  }

  @Override
  public Map<String, String> attested(Attested entry) {
    return told("attested", entry, entry.text());
  }

  @Override
  public Map<String, String> misfitAccepted(MisfitAccepted entry) {
    return placed("misfit-accepted", entry, entry.place());
  }

  /** What was taken back is not in the file, and neither is the taking back. */
  @Override
  public Map<String, String> withdrawn(Withdrawn entry) {
    return Map.of();
  }

  /** A room's, not a lot's. */
  @Override
  public Map<String, String> accuracyStated(AccuracyStated entry) {
    return Map.of();
  }

  /** A session's, not a lot's. */
  @Override
  public Map<String, String> tasting(Tasting entry) {
    return Map.of();
  }

  /** A variety's, not a lot's. */
  @Override
  public Map<String, String> varietyDecided(VarietyDecided entry) {
    return Map.of();
  }

  /** A room's, not a lot's. */
  @Override
  public Map<String, String> outputTried(OutputTried entry) {
    return Map.of();
  }

  /** A room's, not a lot's. */
  @Override
  public Map<String, String> roomAsked(RoomAsked entry) {
    return Map.of();
  }

  /** An alarm's, not a lot's. */
  @Override
  public Map<String, String> alarmAnswered(AlarmAnswered entry) {
    return Map.of();
  }

  /** A room's, not a lot's. */
  @Override
  public Map<String, String> workAnnounced(WorkAnnounced entry) {
    return Map.of();
  }

  /** A probe's, not a lot's. */
  @Override
  public Map<String, String> probeCalibrated(ProbeCalibrated entry) {
    return Map.of();
  }

  /** The file holds what stands. */
  @Override
  public Map<String, String> corrected(Corrected entry) {
    return entry.instead().accept(this);
  }

  private static Map<String, String> counted(String kind, OfLot entry, int count) {
    Map<String, String> row = of(kind, entry);
    put(row, "count", count);
    return row;
  }

  private static Map<String, String> placed(String kind, OfLot entry, String place) {
    Map<String, String> row = of(kind, entry);
    put(row, "place", place);
    return row;
  }

  private static Map<String, String> told(String kind, OfLot entry, String text) {
    Map<String, String> row = of(kind, entry);
    put(row, "note", text);
    return row;
  }

  private static Map<String, String> of(String kind, OfLot entry) {
    Map<String, String> row = new LinkedHashMap<>();
    put(row, "kind", kind);
    put(row, "lot", entry.lot());
    put(row, "at", entry.at());
    return row;
  }

  private static void put(Map<String, String> row, String column, @Nullable Object value) {
    if (value != null) {
      row.put(column, value.toString());
    }
  }

  private static @Nullable String thousandths(@Nullable Integer value) {
    return value == null ? null : BigDecimal.valueOf(value, 3).toPlainString();
  }

  private static String yes(boolean value) {
    return value ? "yes" : "no";
  }
}
