package rindward.controller.notice;

import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import rindward.controller.alarm.Priority;

/**
 * Somebody who is told. What wakes comes at any hour; all else waits for the person's digest.
 *
 * @param wants which priorities this person is told about
 * @param digestAt when the day's digest comes, the site's time
 * @param channels names of the channels that reach this person
 */
public record Person(String name, Set<Priority> wants, LocalTime digestAt, List<String> channels) {
  public Person {
    wants = Set.copyOf(wants);
    channels = List.copyOf(channels);
  }
}
