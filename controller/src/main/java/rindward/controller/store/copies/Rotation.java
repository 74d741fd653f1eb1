package rindward.controller.store.copies;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * When a copy is due and which copies are kept, from nothing but the moments they were made. The
 * newest of each of seven days is kept, and of what is older the newest of each of four weeks.
 */
final class Rotation {
  static final int DAYS = 7;
  static final int WEEKS = 4;

  /** Nobody waits for a page then. */
  private static final LocalTime NIGHT = LocalTime.of(3, 0);

  private Rotation() {}

  /** Tells whether none of the copies was made since the last night began. */
  static boolean isDue(Collection<Instant> made, Instant now, ZoneId zone) {
    ZonedDateTime today = now.atZone(zone).with(NIGHT);
    Instant night = (today.toInstant().isAfter(now) ? today.minusDays(1) : today).toInstant();
    return made.stream().noneMatch(at -> !at.isBefore(night) && !at.isAfter(now));
  }

  /** Returns the copies that are kept. */
  static Set<Instant> kept(Collection<Instant> made, ZoneId zone) {
    List<Instant> newestFirst = made.stream().sorted(Comparator.reverseOrder()).toList();
    Function<Instant, LocalDate> day = at -> at.atZone(zone).toLocalDate();
    Set<LocalDate> days = new HashSet<>();
    Set<LocalDate> weeks = new HashSet<>();
    Set<Instant> kept = new HashSet<>();
    for (Instant at : newestFirst) {
      LocalDate date = day.apply(at);
      if (days.contains(date)) {
        continue;
      }
      if (days.size() < DAYS) {
        days.add(date);
        kept.add(at);
      } else if (weeks.size() < WEEKS
          && weeks.add(date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)))) {
        kept.add(at);
      }
    }
    return kept;
  }
}
