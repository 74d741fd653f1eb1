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

/** What must hold of the serving orders of any panel. */
class ServingOrdersPropertyTest {
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
    assertThat(orders.placeSpread()).isLessThanOrEqualTo(1);
    assertThat(orders.followerSpread()).isLessThanOrEqualTo(1);
  }
}
