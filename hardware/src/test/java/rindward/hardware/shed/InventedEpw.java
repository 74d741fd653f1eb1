package rindward.hardware.shed;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** A year in EPW form that nobody ever measured: row n has n/200 C, dry air, wind 3 m/s, no sun. */
final class InventedEpw {
  /** Returns the lines, eight of them header; the list may be changed. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("LOCATION,Nowhere Field,-,-,Made up,000000,45.0,-90.0,-6.0,200.0");
    lines.add("DESIGN CONDITIONS,0");
    lines.add("TYPICAL/EXTREME PERIODS,0");
    lines.add("GROUND TEMPERATURES,1,2,,,," + "5,5,6,8,10,12,14,14,13,11,9,6");
    lines.add("HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0");
    lines.add("COMMENTS 1,made up");
    lines.add("COMMENTS 2,made up");
    lines.add("DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31");
    LocalDateTime start = LocalDateTime.of(2001, 1, 1, 0, 0);
    for (int row = 0; row < 8760; row++) {
      lines.add(row(start.plusHours(row), row));
    }
    return lines;
  }

  private static String row(LocalDateTime hour, int row) {
    String stamp =
        hour.getYear()
            + ","
            + hour.getMonthValue()
            + ","
            + hour.getDayOfMonth()
            + ","
            + (hour.getHour() + 1)
            + ",0,made-up,";
    double temperatureC = row / 200.0;
    return stamp + temperatureC + ",-10.0,40,99500,0,0,0,0,0,0,0,0,0,0,180,3.0,0,0,10,1000,9,0";
  }
}
