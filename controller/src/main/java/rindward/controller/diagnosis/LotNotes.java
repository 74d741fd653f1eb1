package rindward.controller.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.alarm.Finding;
import rindward.controller.readiness.EatingOrder.Offer;

/**
 * What the alarms must know of the lots. Made off the control thread, for it reads the record.
 *
 * @param freezingMilliC the highest freezing point among the lots of each room that holds any,
 *     thousandths of a degree C
 * @param ofRooms what is so of single lots in their room: those that do not belong there
 * @param ofShed what is so of single lots wherever they lie: cured, ready, to be eaten first, past
 * @param lots every lot that holds fruit, as it was last judged
 */
public record LotNotes(
    Map<String, Integer> freezingMilliC,
    Map<String, Set<Finding>> ofRooms,
    Set<Finding> ofShed,
    List<Offer> lots) {

  /** Nothing is known of any lot. */
  public static final LotNotes NONE = new LotNotes(Map.of(), Map.of(), Set.of(), List.of());

  public LotNotes {
    freezingMilliC = Map.copyOf(freezingMilliC);
    ofRooms = Map.copyOf(ofRooms);
    ofShed = Set.copyOf(ofShed);
    lots = List.copyOf(lots);
  }
}
