package rindward.controller.notice;

import java.time.Duration;
import java.util.List;
import rindward.controller.alarm.Priority;

/**
 * Everybody who is told, in the order in which they are called.
 *
 * @param answerWithin after so long without an answer the next in line is called
 * @param remindEvery how often all are reminded once everybody has been called
 */
public record EscalationLine(List<Person> persons, Duration answerWithin, Duration remindEvery) {
  /** Every digest comes within a day, so after two nothing waits any longer. */
  public static final Duration LONGEST_DIGEST_WAIT = Duration.ofDays(2);

  public EscalationLine {
    persons = List.copyOf(persons);
  }

  /** Returns the names of those who want to be told about a priority, in order. */
  List<String> wanting(Priority priority) {
    return persons.stream().filter(p -> p.wants().contains(priority)).map(Person::name).toList();
  }
}
