package rindward.controller.alarm;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How well the alarms behaved over a time, by the marks of IEC 62682 and ISA-18.2 as public alarm
 * reports quote them: few a day, none chattering, few stale, no floods.
 *
 * @param alarms how many were shown
 * @param periodSeconds the time looked at
 * @param mostInTenMinutes the most in any ten minutes
 * @param floods how often more than ten came in ten minutes; one flood lasts until fewer than five
 *     do (the lower figure is from memory)
 * @param chattering what was set and cleared three times or more within a minute
 * @param stale what was on for more than 24 hours at a time
 */
public record AlarmPerformance(
    int alarms,
    long periodSeconds,
    int mostInTenMinutes,
    int floods,
    Set<AlarmId> chattering,
    Set<AlarmId> stale) {
  private static final int FLOOD_SECONDS = 600;
  private static final int FLOOD_BEGINS_ABOVE = 10;
  private static final int FLOOD_ENDS_BELOW = 5;
  private static final int CHATTER_CYCLES = 3;
  private static final int CHATTER_SECONDS = 60;
  private static final long DAY_SECONDS = 86_400;

  /**
   * Judges a history.
   *
   * @param history all that was shown between the two times, in any order
   * @param toSeconds end of the time looked at; what is still on lasts until then
   */
  public static AlarmPerformance of(List<Activation> history, long fromSeconds, long toSeconds) {
    long[] shown = history.stream().mapToLong(Activation::onSeconds).sorted().toArray();
    int most = 0;
    int floods = 0;
    boolean isFlood = false;
    int first = 0;
    for (int i = 0; i < shown.length; i++) {
      while (shown[i] - shown[first] >= FLOOD_SECONDS) {
        first++;
      }
      int lately = i - first + 1;
      most = Math.max(most, lately);
      if (!isFlood && lately > FLOOD_BEGINS_ABOVE) {
        floods++;
        isFlood = true;
      } else if (lately < FLOOD_ENDS_BELOW) {
        isFlood = false;
      }
    }
    return new AlarmPerformance(
        shown.length,
        toSeconds - fromSeconds,
        most,
        floods,
        which(history, AlarmPerformance::isChattering),
        which(history, all -> all.stream().anyMatch(one -> isStale(one, toSeconds))));
  }

  /** Returns how many came on an average day, in thousandths. */
  public long perDayThousandths() {
    return Math.round(alarms * 1000.0 * DAY_SECONDS / periodSeconds);
  }

  private static Set<AlarmId> which(List<Activation> history, Predicate<List<Activation>> isSo) {
    return history.stream().collect(Collectors.groupingBy(Activation::id)).entrySet().stream()
        .filter(e -> isSo.test(e.getValue()))
        .map(Map.Entry::getKey)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean isChattering(List<Activation> one) {
    long[] cleared =
        one.stream()
            .filter(a -> a.offSeconds() != Activation.STILL_ON)
            .mapToLong(Activation::onSeconds)
            .sorted()
            .toArray();
    for (int i = CHATTER_CYCLES - 1; i < cleared.length; i++) {
      if (cleared[i] - cleared[i - CHATTER_CYCLES + 1] < CHATTER_SECONDS) {
        return true;
      }
    }
    return false;
  }

  private static boolean isStale(Activation one, long toSeconds) {
    return Math.min(one.offSeconds(), toSeconds) - one.onSeconds() > DAY_SECONDS;
  }
}
