package rindward.controller.variety;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import rindward.controller.crop.Crop;

/**
 * What a grower needs of a variety to grow it again. The shares and the day are common practice;
 * how long a type keeps is the guide's.
 *
 * @param ripeHundredths of a lot that must be ripe when it is picked; 0 for a type that is not told
 *     by fruit set
 * @param keepHundredths of a lot that must be sound until the day
 * @param keepUntil of the winter after the harvest; empty for a type that is not asked to keep till
 *     then
 * @param keepDays for how long it must keep at least where there is no such day; 0 for a type that
 *     is eaten as it comes
 */
public record Need(
    int ripeHundredths, int keepHundredths, Optional<MonthDay> keepUntil, int keepDays) {
  private static final int THREE_IN_FOUR = 75;
  private static final MonthDay FIRST_OF_MARCH = MonthDay.of(3, 1);

  /** A type that keeps for less is eaten as it comes. */
  private static final int SHORTEST_DAYS = 60;

  /** One that the guide has keep for as long is asked to keep till March. */
  private static final int WINTER_DAYS = 150;

  /** Returns what is needed of a type when the grower has said nothing else. */
  static Need of(Crop crop) {
    int days = crop.keeping().life().value().low();
    return new Need(
        crop.maturity().isPresent() ? THREE_IN_FOUR : 0,
        THREE_IN_FOUR,
        days < WINTER_DAYS ? Optional.empty() : Optional.of(FIRST_OF_MARCH),
        days < SHORTEST_DAYS ? 0 : days);
  }

  /** Tells whether it must keep at all. */
  boolean isToKeep() {
    return keepDays > 0;
  }

  /** Returns after how many days a lot must still be sound. */
  int daysToKeep(Grown grown) {
    if (keepUntil.isEmpty()) {
      return keepDays;
    }
    LocalDate in = grown.lot().harvestedAt().atZone(ZoneOffset.UTC).toLocalDate();
    LocalDate day = keepUntil.get().atYear(in.getYear());
    LocalDate until = day.isAfter(in) ? day : day.plusYears(1);
    return (int) ChronoUnit.DAYS.between(in, until);
  }

  /** Returns how long it must keep, as part of a sentence. */
  String keepWords() {
    return keepUntil
        .map(day -> "until " + day.getDayOfMonth() + " " + month(day.getMonth().name()))
        .orElse(keepDays + " days after harvest");
  }

  private static String month(String name) {
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }
}
