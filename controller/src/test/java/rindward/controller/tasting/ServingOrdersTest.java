package rindward.controller.tasting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who tastes what when: Williams designs, their balance, and what is left of it in small panels.
 */
class ServingOrdersTest {

  /**
   * Designs of 6 as printed by the MRC Cognition and Brain Sciences Unit; others by the same rule.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 123 231 312 321 132 213",
    "4, 1243 2314 3421 4132",
    "5, 12534 23145 34251 45312 51423 43521 54132 15243 21354 32415",
    "6, 126354 231465 342516 453621 564132 615243",
    "8, 12837465 23148576 34251687 45362718 56473821 67584132 78615243 81726354"
  })
  void williamsDesigns_areThePublishedOnes(int samples, String design) {
    String drawn =
        Williams.orders(samples).stream()
            .map(o -> o.stream().map(s -> "" + (s + 1)).collect(Collectors.joining()))
            .collect(Collectors.joining(" "));
    assertThat(drawn).isEqualTo(design);
  }

  @Property(tries = 60)
  void wholeSetsOfOrders_areBalanced(
      @ForAll @IntRange(min = 2, max = 8) int samples,
      @ForAll @IntRange(min = 1, max = 2) int sets,
      @ForAll long seed) {
    int set = samples % 2 == 0 ? samples : 2 * samples;
    ServingOrders orders = ServingOrders.draw(samples, sets * set, new Draw(seed));
    assertThat(orders.isBalanced()).isTrue();
    assertThat(Arrays.stream(orders.places()).flatMapToInt(Arrays::stream))
        .containsOnly(sets * set / samples);
    assertThat(orders.sentence()).startsWith("Balanced");
  }

  @Property(tries = 60)
  void anyPanel_tastesEverySampleOnce(
      @ForAll @IntRange(min = 2, max = 8) int samples,
      @ForAll @IntRange(min = 1, max = 20) int panelists,
      @ForAll long seed) {
    List<List<Integer>> orders = ServingOrders.draw(samples, panelists, new Draw(seed)).orders();
    Set<Integer> all = IntStream.range(0, samples).boxed().collect(Collectors.toSet());
    assertThat(orders).hasSize(panelists);
    assertThat(orders).allSatisfy(o -> assertThat(new HashSet<>(o)).isEqualTo(all));
    assertThat(orders).allSatisfy(o -> assertThat(o).hasSize(samples));
  }

  @Property(tries = 60)
  void evenNumberOfSamples_placesAndNeighboursNeverDifferByMoreThanOne(
      @ForAll @IntRange(min = 1, max = 4) int pairs,
      @ForAll @IntRange(min = 1, max = 20) int panelists,
      @ForAll long seed) {
    ServingOrders orders = ServingOrders.draw(2 * pairs, panelists, new Draw(seed));
    IntStream places = Arrays.stream(orders.places()).flatMapToInt(Arrays::stream);
    assertThat(places.summaryStatistics())
        .satisfies(s -> assertThat(s.getMax() - s.getMin()).isLessThanOrEqualTo(1));
  }

  @Test
  void panelTooSmall_saysWhatIsMissing() {
    assertThat(ServingOrders.draw(7, 3, new Draw(1)).sentence())
        .startsWith("3 tasters of 7 samples cannot be balanced, which takes 14 tasters")
        .endsWith("places of a sample differ by up to 1, its neighbours by up to 1.");
    assertThat(ServingOrders.draw(4, 1, new Draw(1)).sentence())
        .startsWith("1 taster of 4 samples");
  }

  @Test
  void draw_sameSeed_isTheSame() {
    assertThat(ServingOrders.draw(6, 5, new Draw(7)))
        .isEqualTo(ServingOrders.draw(6, 5, new Draw(7)));
  }
}
