package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.diagnosis.Room;
import rindward.hardware.Thousandths;

/** Deadband, on-delay and off-delay as OPC 10000-9 clause 5.8 defines them. */
class DelayedTest {
  private static final AlarmRow ROW = Room.row(AlarmKind.TOO_WARM, Priority.DIGEST);

  private Delayed delayed = Delayed.QUIET;

  private boolean after(int milliC, long seconds) {
    delayed = delayed.after(Condition.above(milliC, 30_000, 500), ROW, seconds);
    return delayed.active();
  }

  /** High limit 30, deadband 0.5, on-delay 60 s. */
  @Test
  void briefSpike_isIgnored() {
    assertThat(after(30_100, 0)).isFalse();
    assertThat(after(30_100, 59)).isFalse();
    assertThat(after(29_400, 60)).isFalse();
    assertThat(after(30_100, 61)).isFalse();
    assertThat(after(30_100, 120)).isFalse();
    assertThat(after(30_100, 121)).isTrue();
  }

  @Test
  void onceActive_clearsOnlyBelowTheDeadbandAndAfterTheOffDelay() {
    after(30_100, 0);
    assertThat(after(30_100, 60)).isTrue();
    assertThat(after(29_600, 1000)).isTrue();
    assertThat(after(29_400, 1001)).isTrue();
    assertThat(after(29_400, 1120)).isTrue();
    assertThat(after(29_400, 1121)).isFalse();
  }

  @Test
  void valueExactlyOnTheLimit_isStillRight() {
    assertThat(Condition.above(30_000, 30_000, 0)).isEqualTo(Condition.ABSENT);
    assertThat(Condition.below(10_000, 10_000, 0)).isEqualTo(Condition.ABSENT);
    assertThat(Condition.below(9_999, 10_000, 0)).isEqualTo(Condition.PRESENT);
    assertThat(Condition.below(10_499, 10_000, 500)).isEqualTo(Condition.UNDECIDED);
    assertThat(Condition.below(10_500, 10_000, 500)).isEqualTo(Condition.ABSENT);
  }

  @Test
  void valueThatIsNotKnown_changesNothing() {
    after(30_100, 0);
    assertThat(after(Thousandths.NONE, 60)).isTrue();
    assertThat(after(Thousandths.NONE, 9000)).isTrue();
  }
}
