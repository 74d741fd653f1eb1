package rindward.controller.exchange;

import java.time.ZoneId;

/** How a logger writes an instant. */
public interface TimeFormat {
  /** Stands for "no row came before" in {@link #toMillis}. */
  long NO_ROW_BEFORE = Long.MIN_VALUE;

  /**
   * Returns the instant in epoch milliseconds.
   *
   * @param text the field, without spaces around it
   * @param previousMillis instant of the row before, which decides between the two passes of the
   *     hour that a clock repeats in autumn; {@link #NO_ROW_BEFORE} if there is none
   * @throws java.time.DateTimeException or {@link NumberFormatException} if it is not one
   */
  long toMillis(String text, long previousMillis);

  /** Returns what a time must look like, to end the sentence "but it must be". */
  String expected();

  /**
   * Returns the format of that name: {@code epoch-millis}, {@code epoch-seconds}, {@code iso}, or
   * else a date pattern as in {@link java.time.format.DateTimeFormatter}, months in English.
   *
   * @param zone where local times were taken; not asked for times that carry their offset
   */
  static TimeFormat of(String name, ZoneId zone) {
    return switch (name) {
      case "epoch-millis" -> EpochTime.MILLIS;
      case "epoch-seconds" -> EpochTime.SECONDS;
      case "iso" -> DateTime.iso(zone);
      default -> DateTime.ofPattern(name, zone);
    };
  }
}
