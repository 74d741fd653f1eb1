package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import rindward.controller.keeping.PValue;

class HolmTest {
  /** Worked by hand from Holm 1979: 4 x 0.01; 3 x 0.015; 2 x 0.03; 0.2, in the order given. */
  @Test
  void chances_areCorrectedFromTheSmallestUp() {
    List<PValue> chances = DoubleStream.of(0.03, 0.01, 0.2, 0.015).mapToObj(PValue::new).toList();
    assertThat(Holm.correct(chances).stream().mapToDouble(PValue::value))
        .usingComparatorForType(
            (a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b), Double.class)
        .containsExactly(0.06, 0.04, 0.2, 0.045);
    assertThat(Holm.correct(List.of(new PValue(0.6), new PValue(0.7))).get(0).value())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void single_isLeftAsItIs() {
    assertThat(Holm.correct(List.of(new PValue(0.04)))).containsExactly(new PValue(0.04));
    assertThat(Holm.correct(List.of())).isEmpty();
  }
}
