package rindward.controller.command.base;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** A moment as the farm's clock shows it: the one clock of pages, alarms and commands. */
public final class FarmTime {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private FarmTime() {}

  /** Returns it to the minute. */
  public static String words(Instant at, ZoneId zone) {
    return MINUTE.format(at.atZone(zone));
  }
}
