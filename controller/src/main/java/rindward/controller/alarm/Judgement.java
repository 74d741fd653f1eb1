package rindward.controller.alarm;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What one tick made of the shed: the alarms and the facts they were judged by. Immutable.
 *
 * @param at the tick's wall time
 * @param seconds the tick's monotonic time, by which the alarms count
 */
public record Judgement(Alarms alarms, ShedFacts facts, Instant at, long seconds) {

  /** Nothing has been looked at yet. */
  public static final Judgement NONE =
      new Judgement(Alarms.NONE, new ShedFacts(List.of(), Set.of()), Instant.EPOCH, 0);

  /** Returns the wall time of a monotonic second. */
  public Instant wall(long monotonicSeconds) {
    return at.plusSeconds(monotonicSeconds - seconds);
  }

  /**
   * Returns what a person should see: every alarm that calls, was not acknowledged or waits to be
   * reset, the most urgent first and of these the newest. News is none.
   */
  public List<AlarmId> open(AlarmTable table) {
    return in(table, state -> state.isOpen());
  }

  /** Returns what is silent because a person said so: shelved, or out of service. */
  public List<AlarmId> silenced(AlarmTable table) {
    return in(table, state -> state == AlarmState.SHELVED || state == AlarmState.OUT_OF_SERVICE);
  }

  private List<AlarmId> in(AlarmTable table, Predicate<AlarmState> wanted) {
    return alarms.all().entrySet().stream()
        .filter(e -> wanted.test(e.getValue().state()))
        .filter(e -> table.row(e.getKey().kind()).priority() != Priority.NEWS)
        .sorted(
            Comparator.comparing(
                    (Map.Entry<AlarmId, Alarm> e) -> table.row(e.getKey().kind()).priority())
                .thenComparing(e -> -e.getValue().condition().sinceSeconds())
                .thenComparing(e -> e.getKey().key()))
        .map(Map.Entry::getKey)
        .toList();
  }
}
