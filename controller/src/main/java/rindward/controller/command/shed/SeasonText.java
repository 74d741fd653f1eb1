package rindward.controller.command.shed;

import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.controller.season.SeasonResult;
import rindward.controller.season.SeasonResult.LotReport;
import rindward.controller.season.SeasonResult.OutputReport;
import rindward.controller.season.SeasonResult.RoomReport;

/** A season's report as a person reads it. */
final class SeasonText {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private SeasonText() {}

  static void print(PrintWriter out, SeasonResult report, ZoneId zone) {
    report.rooms().forEach(room -> print(out, room));
    for (LotReport lot : report.lots()) {
      out.printf(
          Locale.ROOT,
          "Lot %-5s in its range %6.0f h; %s%n",
          lot.code(),
          lot.inRangeHours(),
          lot.curedAt() == null
              ? String.format(Locale.ROOT, "cure %.0f %%", 100 * lot.cureProgress())
              : "cured on " + DAY.format(lot.curedAt().atZone(zone)));
    }
    out.flush();
  }

  private static void print(PrintWriter out, RoomReport room) {
    out.printf(
        Locale.ROOT,
        "Room %s: in its range %.1f %% of the time%n",
        room.name(),
        100 * room.inRangeShare());
    out.printf(
        Locale.ROOT,
        "  coldest %s C, dampest %s %%; too cold %.0f h, too warm %.0f h, too dry %.0f h, too damp"
            + " %.0f h%n",
        shown(room.coldestC()),
        shown(room.dampestRh()),
        room.tooColdHours(),
        room.tooWarmHours(),
        room.tooDryHours(),
        room.tooDampHours());
    out.printf(
        Locale.ROOT,
        "  fruit wet %.1f h, chilled %.1f degree-hours; %.0f kWh%n",
        room.wetFruitHours(),
        room.chillingDegreeHours(),
        room.kWh());
    for (OutputReport output : room.outputs()) {
      out.printf(
          Locale.ROOT,
          "    %-14s %6.0f kWh %7.0f h on %7d switchings%n",
          output.kind(),
          output.kWh(),
          output.hoursOn(),
          output.switchings());
    }
    out.println();
  }

  private static String shown(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }
}
