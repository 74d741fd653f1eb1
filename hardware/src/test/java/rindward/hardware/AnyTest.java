package rindward.hardware;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The thousand cases of a property see the ends of every range, not only its middle. */
class AnyTest {
  @ParameterizedTest
  @ValueSource(ints = {-40_000, -39_999, -1, 0, 1, 59_999, 60_000})
  void wholeNumbers_endsAndZeroAndTheirNeighboursAreDrawnOften(int edge) {
    assertThat(drawn(any -> any.intBetween(-40_000, 60_000)).get(edge)).isGreaterThan(5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, 0, 60})
  void numbers_endsAndZeroAreDrawnOften(double edge) {
    assertThat(drawn(any -> any.doubleBetween(-40, 60)).get(edge)).isGreaterThan(5);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 60})
  void lists_emptySingleAndFullAreDrawnOften(int size) {
    assertThat(drawn(any -> any.list(0, 60, any::yesOrNo).size()).get(size)).isGreaterThan(5);
  }

  @Test
  void everythingElseIsDrawnToo() {
    assertThat(drawn(any -> any.intBetween(1, 20))).hasSize(20);
    assertThat(drawn(any -> any.intBetween(-40_000, 60_000))).hasSizeGreaterThan(700);
  }

  @Test
  void theSameSeedDrawsTheSame() {
    assertThat(drawn(any -> any.doubleBetween(0, 1))).isEqualTo(drawn(a -> a.doubleBetween(0, 1)));
  }

  private static <T> Map<T, Integer> drawn(Function<Any, T> draw) {
    Map<T, Integer> times = new HashMap<>();
    for (long seed = 0; seed < 1000; seed++) {
      times.merge(draw.apply(new Any(seed)), 1, Integer::sum);
    }
    return times;
  }
}
