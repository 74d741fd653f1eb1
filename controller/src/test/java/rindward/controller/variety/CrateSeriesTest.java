package rindward.controller.variety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rindward.controller.keeping.Weighing;
import rindward.controller.keeping.WeightLoss;

class CrateSeriesTest {
  /** Put into one series these two crates lose 1.7 % a month, from -98.7 to 102.1 %. */
  @Test
  void twoCratesOfAsManyFruits_areTwoSeries() {
    CrateSeries crates = new CrateSeries();
    for (int month = 0; month < 4; month++) {
      crates.add(12, new Weighing(30 * month, 20_000 - 400 * month));
      crates.add(12, new Weighing(30 * month, 13_000 - 260 * month));
    }
    WeightLoss loss = WeightLoss.of(crates.all()).orElseThrow();
    assertThat(crates.all()).hasSize(2);
    assertThat(loss.monthlyPct()).isCloseTo(2, within(0.01));
    assertThat(loss.interval().orElseThrow().high()).isLessThan(2.1);
  }

  @Test
  void crateFromWhichAFruitWasTaken_isAnotherSeries() {
    CrateSeries crates = new CrateSeries();
    crates.add(12, new Weighing(0, 20_000));
    crates.add(11, new Weighing(30, 18_000));
    crates.add(12, new Weighing(60, 12_000));
    assertThat(crates.all()).hasSize(3);
  }
}
