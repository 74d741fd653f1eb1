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
  private record Arrow(AlarmState from, Happening happening, AlarmState to) {}

  private static final List<Arrow> DIAGRAM =
      List.of(
          new Arrow(NORMAL, Happening.OCCURS, UNACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, Happening.ACKNOWLEDGED, ACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, Happening.RETURNS_TO_NORMAL, RETURNED_UNACKNOWLEDGED),
          new Arrow(UNACKNOWLEDGED, Happening.RETURNS_LATCHING, LATCHED_UNACKNOWLEDGED),
          new Arrow(ACKNOWLEDGED, Happening.RETURNS_TO_NORMAL, NORMAL),
          new Arrow(ACKNOWLEDGED, Happening.RETURNS_LATCHING, LATCHED_ACKNOWLEDGED),
          new Arrow(RETURNED_UNACKNOWLEDGED, Happening.ACKNOWLEDGED, NORMAL),
          new Arrow(RETURNED_UNACKNOWLEDGED, Happening.OCCURS, UNACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, Happening.ACKNOWLEDGED, LATCHED_ACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, Happening.RESET, RETURNED_UNACKNOWLEDGED),
          new Arrow(LATCHED_UNACKNOWLEDGED, Happening.OCCURS, UNACKNOWLEDGED),
          new Arrow(LATCHED_ACKNOWLEDGED, Happening.RESET, NORMAL),
          new Arrow(LATCHED_ACKNOWLEDGED, Happening.OCCURS, UNACKNOWLEDGED));

  @Test
  void arrowsAreThoseOfTheStandardAndNoOthers() {
    List<Arrow> ours = new ArrayList<>();
    for (AlarmState from : AlarmState.values()) {
      for (Happening happening : Happening.values()) {
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
