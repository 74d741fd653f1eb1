package rindward.controller.alarm;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import rindward.hardware.Thousandths;

/** Says how bad it is, in one sentence with the room's own figures. */
public final class AlarmSentence {
  private static final int ROUND_TO_MINUTES = 5;

  private AlarmSentence() {}

  /**
   * Returns the sentence; empty for what is simply so and has no figure.
   *
   * @param now the site's time of day; a forecast is told to five minutes
   */
  public static String sentence(AlarmKind kind, RoomFacts room, LocalTime now) {
    return switch (kind) {
      case CHILLING, HEATER_WITHOUT_EFFECT, COOLING_FASTER -> chilling(room, now);
      case NEAR_FREEZING ->
          figures("It is at %s C; %s C is near freezing.", room.stockMilliC(), room.frostMilliC());
      case COLD_AIR ->
          figures(
              "The coldest air is at %s C and should not be below %s C.",
              room.coldestMilliC(), room.wanted().temperature().low());
      case TOO_WARM ->
          figures(
              "The warmest air is at %s C and should not be above %s C.",
              room.warmestMilliC(), room.wanted().temperature().high());
      case HIGH_LIMIT, HEATER_RUNAWAY ->
          figures(
              "The warmest air is at %s C; the limit is %s C.",
              room.warmestMilliC(), room.highLimitMilliC());
      case TOO_DAMP ->
          figures(
              "The air is at %s %% and should not be above %s %%.",
              room.humidityMilliPct(), room.wanted().humidity().high());
      case TOO_DRY ->
          figures(
              "The air is at %s %% and should not be below %s %%.",
              room.humidityMilliPct(), room.wanted().humidity().low());
      case CONDENSATION ->
          figures(
              "The air's dew point is %s C and the fruit is at %s C.",
              room.dewPointMilliC(), room.fruitMilliC());
      default -> "";
    };
  }

  private static String chilling(RoomFacts room, LocalTime now) {
    if (room.minutesToChilling() > 0 && room.chillingMilliC() != Thousandths.NONE) {
      LocalTime then = now.truncatedTo(ChronoUnit.MINUTES).plusMinutes(room.minutesToChilling());
      LocalTime told = then.minusMinutes(then.getMinute() % ROUND_TO_MINUTES);
      return String.format(
          Locale.ROOT,
          "The room falls below %s C at about %s.",
          shown(room.chillingMilliC()),
          told.format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT)));
    }
    return figures(
        "The fruit is at %s C; it chills below %s C.", room.fruitMilliC(), room.chillingMilliC());
  }

  private static String figures(String sentence, int first, int second) {
    return first == Thousandths.NONE || second == Thousandths.NONE
        ? ""
        : String.format(Locale.ROOT, sentence, shown(first), shown(second));
  }

  private static String shown(int thousandths) {
    String text = String.format(Locale.ROOT, "%.1f", Thousandths.toDouble(thousandths));
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
