package rindward.controller.tasting.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rindward.controller.Any;
import rindward.controller.Seeded;

/** What must hold of the serving orders of any panel. */
class ServingOrdersPropertyTest {
  @Seeded(cases = 60)
  void wholeSetsOfOrders_areBalanced(Any any) {
    int samples = any.intBetween(2, 8);
    int sets = any.intBetween(1, 2);
    long seed = any.anyLong();
    int set = samples % 2 == 0 ? samples : 2 * samples;
    ServingOrders orders = ServingOrders.draw(samples, sets * set, new Draw(seed));
    assertThat(orders.isBalanced()).isTrue();
    assertThat(Arrays.stream(orders.places()).flatMapToInt(Arrays::stream))
        .containsOnly(sets * set / samples);
    assertThat(orders.sentence()).startsWith("Balanced");
  }

  @Seeded(cases = 60)
  void anyPanel_tastesEverySampleOnce(Any any) {
    int samples = any.intBetween(2, 8);
    int panelists = any.intBetween(1, 20);
    long seed = any.anyLong();
    List<List<Integer>> orders = ServingOrders.draw(samples, panelists, new Draw(seed)).orders();
    Set<Integer> all = IntStream.range(0, samples).boxed().collect(Collectors.toSet());
    assertThat(orders).hasSize(panelists);
    assertThat(orders).allSatisfy(o -> assertThat(new HashSet<>(o)).isEqualTo(all));
    assertThat(orders).allSatisfy(o -> assertThat(o).hasSize(samples));
  }

  @Seeded(cases = 60)
  void evenNumberOfSamples_placesAndNeighboursNeverDifferByMoreThanOne(Any any) {
    int pairs = any.intBetween(1, 4);
    int panelists = any.intBetween(1, 20);
    long seed = any.anyLong();
    ServingOrders orders = ServingOrders.draw(2 * pairs, panelists, new Draw(seed));
    assertThat(orders.placeSpread()).isLessThanOrEqualTo(1);
    assertThat(orders.followerSpread()).isLessThanOrEqualTo(1);
  }
}
