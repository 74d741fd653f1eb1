package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;

class AcrossFlightsTest {
  @Test
  void twoGoes_areComparedByTheirDistanceFromTheCheck() {
    List<FlightResult> goes =
        List.of(
            go(List.of("A", "K"), List.of(8, 6), List.of(7, 6)),
            go(List.of("B", "K"), List.of(5, 6), List.of(6, 7)));

    assertThat(AcrossFlights.of(goes, Optional.of("K")))
        .containsExactly(
            "From go 1 to go 2 the check K moved by +0.5 points (95 %: -5.9 to +6.9);"
                + " whether the panel held its scale cannot be said, so compare each sample with"
                + " the check of its own go.",
            "Beside the check of its own go: A +1.5, B -1.0; across goes nothing is tested.");
  }

  @Test
  void checkThatMovedByAPoint_isTold_andOneThatIsMissingEndsIt() {
    FlightResult first = go(List.of("A", "K"), List.of(8, 8), List.of(7, 8));
    FlightResult second = go(List.of("B", "K"), List.of(5, 6), List.of(6, 6));
    FlightResult without = go(List.of("B", "C"), List.of(5, 6), List.of(6, 6));

    assertThat(AcrossFlights.of(List.of(first, second), Optional.of("K")).get(0))
        .contains("moved by -2.0 points (95 %: -2.0 to -2.0)")
        .endsWith("so compare each sample with the check of its own go.")
        .doesNotContain("held its scale");
    assertThat(AcrossFlights.of(List.of(first, without), Optional.of("K")))
        .singleElement()
        .asString()
        .startsWith("The goes cannot be compared");
    assertThat(AcrossFlights.of(List.of(first), Optional.of("K"))).isEmpty();
  }

  @Test
  void panelHeldItsScale_isSaidOnlyWhereAMoveOfAPointIsRuledOut() {
    SplittableRandom random = new SplittableRandom(4);
    int saidThoughMoved = 0;
    int saidThoughStill = 0;
    for (int i = 0; i < 2000; i++) {
      saidThoughMoved += held(1.0, 24, random) ? 1 : 0;
      saidThoughStill += held(0.0, 24, random) ? 1 : 0;
    }
    // A move of a point lies inside a 95 % interval that ends at it in one case of forty.
    assertThat(saidThoughMoved).isLessThan(2000 * 4 / 100);
    assertThat(saidThoughStill).isGreaterThan(2000 / 2);
  }

  private static boolean held(double move, int tasters, SplittableRandom random) {
    List<String> names = IntStream.range(0, tasters).mapToObj(i -> "taster " + i).toList();
    List<List<Integer>> before = new ArrayList<>();
    List<List<Integer>> after = new ArrayList<>();
    for (int i = 0; i < tasters; i++) {
      double level = 5 + random.nextGaussian();
      before.add(List.of(5, (int) Math.round(level + random.nextGaussian())));
      after.add(List.of(5, (int) Math.round(level + move + random.nextGaussian())));
    }
    return AcrossFlights.of(
            List.of(go(names, List.of("A", "K"), before), go(names, List.of("B", "K"), after)),
            Optional.of("K"))
        .get(0)
        .contains("the panel held its scale to within a point");
  }

  @SafeVarargs
  private static FlightResult go(List<String> samples, List<Integer>... rows) {
    return go(List.of("Wren", "Ash"), samples, List.of(rows));
  }

  private static FlightResult go(
      List<String> tasters, List<String> samples, List<List<Integer>> rows) {
    return FlightResult.described(
        Attribute.LIKING,
        Blinding.FULL,
        new ScoreTable(tasters, samples, rows),
        List.of(),
        List.of(),
        List.of());
  }
}
