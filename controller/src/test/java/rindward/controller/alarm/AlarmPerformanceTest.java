package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rindward.controller.diagnosis.Room;

/**
 * The marks against their published definitions: chattering, three or more set and clear cycles in
 * a minute (PAS/Hexagon, "chattering alarms"); stale, more than 24 h, and flood, more than 10 in 10
 * minutes (metric tables of public documents citing ISA-18.2 and EEMUA 191).
 */
class AlarmPerformanceTest {
  private static final long DAY = 86_400;
  private static final AlarmId DAMP = Room.alarm(AlarmKind.TOO_DAMP);

  private static Activation on(AlarmKind kind, long at, long seconds) {
    return new Activation(Room.alarm(kind), at, at + seconds);
  }

  private static List<Activation> evenly(int count, long everySeconds) {
    return IntStream.range(0, count)
        .mapToObj(i -> on(AlarmKind.values()[i % 20], i * everySeconds, 30))
        .toList();
  }

  @Test
  void elevenInTenMinutes_areAFlood_tenAreNot() {
    assertThat(AlarmPerformance.of(evenly(10, 59), 0, DAY).floods()).isZero();
    AlarmPerformance eleven = AlarmPerformance.of(evenly(11, 59), 0, DAY);
    assertThat(eleven.floods()).isOne();
    assertThat(eleven.mostInTenMinutes()).isEqualTo(11);
  }

  @Test
  void oneEveryMinute_isNoFlood() {
    assertThat(AlarmPerformance.of(evenly(200, 60), 0, DAY).floods()).isZero();
  }

  @Test
  void twoBurstsAnHourApart_areTwoFloods() {
    List<Activation> bursts =
        Stream.concat(
                evenly(30, 1).stream(),
                evenly(30, 1).stream()
                    .map(a -> new Activation(a.id(), a.onSeconds() + 3600, a.offSeconds() + 3600)))
            .toList();
    assertThat(AlarmPerformance.of(bursts, 0, DAY).floods()).isEqualTo(2);
  }

  @Test
  void threeCyclesWithinAMinute_areChattering() {
    List<Activation> quick =
        LongStream.of(0, 25, 50).mapToObj(at -> on(AlarmKind.TOO_DAMP, at, 5)).toList();
    List<Activation> slow =
        LongStream.of(0, 30, 60).mapToObj(at -> on(AlarmKind.TOO_DAMP, at, 5)).toList();
    assertThat(AlarmPerformance.of(quick, 0, DAY).chattering()).containsExactly(DAMP);
    assertThat(AlarmPerformance.of(slow, 0, DAY).chattering()).isEmpty();
  }

  @Test
  void threeDifferentAlarmsWithinAMinute_areNotChattering() {
    List<Activation> three =
        List.of(
            on(AlarmKind.TOO_DAMP, 0, 5),
            on(AlarmKind.TOO_DRY, 10, 5),
            on(AlarmKind.TOO_WARM, 20, 5));
    assertThat(AlarmPerformance.of(three, 0, DAY).chattering()).isEmpty();
  }

  @Test
  void aSecondMoreThanADay_isStale() {
    assertThat(AlarmPerformance.of(List.of(on(AlarmKind.TOO_DAMP, 0, DAY)), 0, 3 * DAY).stale())
        .isEmpty();
    assertThat(AlarmPerformance.of(List.of(on(AlarmKind.TOO_DAMP, 0, DAY + 1)), 0, 3 * DAY).stale())
        .containsExactly(DAMP);
  }

  @Test
  void whatIsStillOn_lastsUntilTheEnd() {
    List<Activation> open = List.of(new Activation(DAMP, 100, Activation.STILL_ON));
    assertThat(AlarmPerformance.of(open, 0, DAY + 100).stale()).isEmpty();
    assertThat(AlarmPerformance.of(open, 0, DAY + 101).stale()).containsExactly(DAMP);
  }

  @Test
  void perDay_isTheAverageOverTheTimeLookedAt() {
    assertThat(AlarmPerformance.of(evenly(9, 7200), 0, 6 * DAY).perDayThousandths())
        .isEqualTo(1500);
    assertThat(AlarmPerformance.of(List.of(), 0, 6 * DAY).perDayThousandths()).isZero();
  }
}
