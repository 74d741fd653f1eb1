package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Crop;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.Thousandths;

/**
 * What dry air costs. Saturation pressure at 28 C is 3,782 Pa (ASHRAE Fundamentals 2017 ch. 1,
 * table 3); 25 points below 75 % for ten days cost 27e-12 x 3782 x 0.25 x 864,000 = 2.206 % (by
 * hand).
 */
class DryCostTest {
  private static final int DAY_MILLIS = 86_400_000;

  private final DryCost cost = DryCost.of(crop("kabocha")).orElseThrow();

  @Test
  void tenDaysAtFiftyPercent_costWhatTheFormulaSays() {
    held(28_000, 50_000, 10);
    assertThat(cost.milliPct()).isBetween(2_205, 2_207);
  }

  @Test
  void pointsAndDays_addUp_eachAtItsOwnTemperature() {
    held(28_000, 50_000, 5);
    held(28_000 - 10_240, 75_000, 5);
    held(28_000, 25_000, 5);
    // 25 and 50 points for five days each, as much as 37.5 for ten.
    assertThat(cost.milliPct()).isBetween(3_308, 3_310);
  }

  @Test
  void colderAir_takesLess() {
    // 17.76 C: 2,033 Pa by the same table, between 17 and 18 C; half the time as above.
    held(28_000, 75_000, 1);
    held(28_000 - 10_240, 50_000, 10);
    assertThat(cost.milliPct()).isBetween(1_180, 1_190);
  }

  @Test
  void fromTheLimitOn_orWithoutAReading_nothingIsCounted() {
    held(28_000, 75_000, 10);
    held(28_000, Thousandths.NONE, 10);
    held(Thousandths.NONE, 20_000, 10);
    cost.unknown(0, DAY_MILLIS);
    assertThat(cost.milliPct()).isZero();
    held(28_000, 74_900, 10);
    assertThat(cost.milliPct()).isPositive();
  }

  @Test
  void onlySquashWithACureThatDryAirCosts_isCounted() {
    assertThat(DryCost.of(crop("butternut"))).isPresent();
    assertThat(DryCost.of(crop("acorn"))).as("has no cure").isEmpty();
    assertThat(DryCost.of(crop("sweet-potato"))).isEmpty();
    assertThat(DryCost.of(crop("onion"))).isEmpty();
  }

  private void held(int temperatureMilliC, int humidityMilliPct, int days) {
    int[] air = {0, temperatureMilliC};
    int[] damp = {0, humidityMilliPct};
    cost.held(0, (long) days * DAY_MILLIS, air, damp, 1, 1);
  }

  private static Crop crop(String name) {
    return CropGuideReader.builtIn().crop(name).orElseThrow();
  }
}
