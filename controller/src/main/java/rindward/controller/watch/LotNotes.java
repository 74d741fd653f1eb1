package rindward.controller.watch;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.alarm.Finding;

/**
 * What the alarms must know of the lots. Made off the control thread, for it reads the record.
 *
 * @param freezingMilliC the highest freezing point among the lots of each room that holds any,
 *     thousandths of a degree C
 * @param ofRooms what is so of single lots in their room: those that do not belong there
 * @param ofShed what is so of single lots wherever they lie: cured, ready, to be eaten first, past
 * @param lots every lot of which anything is left, as it was last judged
 */
public record LotNotes(
    Map<String, Integer> freezingMilliC,
    Map<String, Set<Finding>> ofRooms,
    Set<Finding> ofShed,
    List<LotStanding> lots) {

  /** Nothing is known of any lot. */
  public static final LotNotes NONE = new LotNotes(Map.of(), Map.of(), Set.of(), List.of());

  public LotNotes {
    freezingMilliC = Map.copyOf(freezingMilliC);
    ofRooms = Map.copyOf(ofRooms);
    ofShed = Set.copyOf(ofShed);
    lots = List.copyOf(lots);
  }
}
