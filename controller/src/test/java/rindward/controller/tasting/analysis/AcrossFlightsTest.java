package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
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
            "The check K got 6.0, 6.5 in the goes in order, so the panel held its scale.",
            "Beside the check of its own go: A +1.5, B -1.0; across goes nothing is tested.");
  }

  @Test
  void checkThatMovedByAPoint_isTold_andOneThatIsMissingEndsIt() {
    FlightResult first = go(List.of("A", "K"), List.of(8, 8), List.of(7, 8));
    FlightResult second = go(List.of("B", "K"), List.of(5, 6), List.of(6, 6));
    FlightResult without = go(List.of("B", "C"), List.of(5, 6), List.of(6, 6));

    assertThat(AcrossFlights.of(List.of(first, second), Optional.of("K")).get(0))
        .contains("the panel shifted");
    assertThat(AcrossFlights.of(List.of(first, without), Optional.of("K")))
        .singleElement()
        .asString()
        .startsWith("The goes cannot be compared");
    assertThat(AcrossFlights.of(List.of(first), Optional.of("K"))).isEmpty();
  }

  @SafeVarargs
  private static FlightResult go(List<String> samples, List<Integer>... rows) {
    return FlightResult.of(
        Attribute.LIKING,
        Blinding.FULL,
        new ScoreTable(List.of("Wren", "Ash"), samples, List.of(rows)),
        List.of(),
        List.of(),
        List.of());
  }
}
