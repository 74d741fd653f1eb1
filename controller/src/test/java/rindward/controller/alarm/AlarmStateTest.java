package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.alarm.AlarmState.ACKNOWLEDGED;
import static rindward.controller.alarm.AlarmState.LATCHED_ACKNOWLEDGED;
import static rindward.controller.alarm.AlarmState.LATCHED_UNACKNOWLEDGED;
import static rindward.controller.alarm.AlarmState.NORMAL;
import static rindward.controller.alarm.AlarmState.RETURNED_UNACKNOWLEDGED;
import static rindward.controller.alarm.AlarmState.UNACKNOWLEDGED;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every arrow of the standard's diagram between its states A to F, and no other (ISA-18.2-2016,
 * "alarm state transition diagram"; the latched states as DEIF PPM 300 designer's handbook 4.4
 * restates them).
 */
class AlarmStateTest {
  private record Arrow(AlarmState from, AlarmEvent happening, AlarmState to) {}

  private static final List<Arrow> DIAGRAM =
      List.of(
          new Arrow(NORMAL, AlarmEvent.OCCURS, UNACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, AlarmEvent.ACKNOWLEDGED, ACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, AlarmEvent.RETURNS_TO_NORMAL, RETURNED_UNACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, AlarmEvent.RETURNS_LATCHING, LATCHED_UNACKNOWLEDGED),
          new Arrow(ACKNOWLEDGED, AlarmEvent.RETURNS_TO_NORMAL, NORMAL),
          new Arrow(ACKNOWLEDGED, AlarmEvent.RETURNS_LATCHING, LATCHED_ACKNOWLEDGED),
          new Arrow(RETURNED_UNACKNOWLEDGED, AlarmEvent.ACKNOWLEDGED, NORMAL),
          new Arrow(RETURNED_UNACKNOWLEDGED, AlarmEvent.OCCURS, UNACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, AlarmEvent.ACKNOWLEDGED, LATCHED_ACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, AlarmEvent.RESET, RETURNED_UNACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, AlarmEvent.OCCURS, UNACKNOWLEDGED),
          new Arrow(LATCHED_ACKNOWLEDGED, AlarmEvent.RESET, NORMAL),
          new Arrow(LATCHED_ACKNOWLEDGED, AlarmEvent.OCCURS, UNACKNOWLEDGED));

  @Test
  void arrowsAreThoseOfTheStandardAndNoOthers() {
    List<Arrow> ours = new ArrayList<>();
    for (AlarmState from : AlarmState.values()) {
      for (AlarmEvent happening : AlarmEvent.values()) {
        if (from.after(happening) != from) {
          ours.add(new Arrow(from, happening, from.after(happening)));
        }
      }
    }
    assertThat(ours).containsExactlyInAnyOrderElementsOf(DIAGRAM);
  }

  @Test
  void aPersonIsAskedForInTheThreeUnacknowledgedStatesOnly() {
    assertThat(Stream.of(AlarmState.values()).filter(AlarmState::needsAcknowledgement))
        .containsExactly(UNACKNOWLEDGED, RETURNED_UNACKNOWLEDGED, LATCHED_UNACKNOWLEDGED);
  }
}
