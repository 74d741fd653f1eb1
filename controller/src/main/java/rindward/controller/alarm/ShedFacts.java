package rindward.controller.alarm;

import java.util.List;
import java.util.Set;

/**
 * All that the alarms need to know in one tick.
 *
 * @param rooms every room of the settings
 * @param findings what is simply so of the shed as a whole: board, power, clock, disk, channels
 */
public record ShedFacts(List<RoomFacts> rooms, Set<Finding> findings) {
  public ShedFacts {
    rooms = List.copyOf(rooms);
    findings = Set.copyOf(findings);
  }
}
