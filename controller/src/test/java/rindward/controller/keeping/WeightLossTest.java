package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.SpeciesGroup;

/** What the scale says, and what the air explains. */
class WeightLossTest {

  @Test
  void of_nothingWeighedTwice_isEmpty() {
    assertThat(WeightLoss.of(List.of(series(0, 2000), new WeightSeries(List.of())))).isEmpty();
  }

  @Test
  void of_twoWeighings_givesARateAndNoInterval() {
    WeightLoss loss = WeightLoss.of(List.of(series(0, 2000, 30, 1950))).orElseThrow();
    assertThat(loss.monthlyPct()).isCloseTo(2.5, within(1e-9));
    assertThat(loss.sentence())
        .isEqualTo(
            "Loses 2.5 % of its weight in 30 days, by two weighings; a third would tell how sure"
                + " that is.");
  }

  @Test
  void of_oneStraightSeries_findsItsRateWhateverTheOrder() {
    WeightLoss loss =
        WeightLoss.of(List.of(series(60, 1900, 0, 2000, 30, 1950, 15, 1975))).orElseThrow();
    assertThat(loss.monthlyPct()).isCloseTo(2.5, within(1e-9));
    assertThat(loss.sentence())
        .isEqualTo(
            "Loses 2.5 % of its weight in 30 days (2.5 to 2.5 %), by one series of weights.");
  }

  @Test
  void of_severalFruits_takesTheIntervalFromTheirSpread() {
    WeightLoss loss =
        WeightLoss.of(
                List.of(
                    series(0, 1000, 30, 980), series(0, 2000, 30, 1940), series(0, 500, 30, 480)))
            .orElseThrow();
    // Rates 2, 3, 4 %: mean 3, standard error 0.57735, t(2) 4.3027 in every printed table.
    assertThat(loss.monthlyPct()).isCloseTo(3, within(1e-9));
    assertThat(loss.interval().orElseThrow().low()).isCloseTo(3 - 2.4841, within(0.0001));
    assertThat(loss.series()).isEqualTo(3);
  }

  /** Two crates that differ: 1.7 % (-98.7 to 102.1 %) was said of one. */
  @Test
  void interval_neverLeavesItsScale() {
    Interval interval =
        WeightLoss.of(List.of(series(0, 1000, 30, 1062), series(0, 1000, 30, 904)))
            .flatMap(WeightLoss::interval)
            .orElseThrow();
    assertThat(interval.low()).isBetween(0.0, 100.0);
    assertThat(interval.high()).isBetween(interval.low(), 100.0);
  }

  @Test
  void of_aHeavierWeight_isKept() {
    assertThat(WeightLoss.of(List.of(series(0, 1000, 30, 1010))).orElseThrow().monthlyPct())
        .isCloseTo(-1, within(1e-9));
  }

  @Test
  void lossPct_constantDeficit_fallsExponentially() {
    // M = M0 exp(-k VPD t) at 900 Pa and 27 ng/(kg s Pa): closed solution, 1, 7 and 14 days.
    double day = 900 * 86_400;
    assertThat(ExpectedLoss.lossPct(27, day)).isCloseTo(0.209732, within(1e-6));
    assertThat(ExpectedLoss.lossPct(27, 7 * day)).isCloseTo(1.458917, within(1e-6));
    assertThat(ExpectedLoss.lossPct(27, 14 * day)).isCloseTo(2.896550, within(1e-6));
  }

  @Test
  void in_storageAir_agreesWithWorkedFigures() {
    // Worked by hand from the same coefficients, one decimal: potato 25 at 4 C and 95 %, 30 days.
    ExpectedLoss potato =
        ExpectedLoss.in(month(4_000, 95_000), Transpiration.of(SpeciesGroup.POTATO));
    assertThat(potato.lowPct()).isCloseTo(0.26, within(0.005));
    ExpectedLoss onion = ExpectedLoss.in(month(0, 65_000), Transpiration.of(SpeciesGroup.ALLIUM));
    assertThat(onion.highPct()).isCloseTo(3.3, within(0.05));
  }

  @Test
  void beside_aLossTheAirCannotExplain_saysWhereToLook() {
    ExpectedLoss expected = new ExpectedLoss(1, 4);
    assertThat(expected.beside(6)).contains("look for soft spots");
    assertThat(expected.beside(2))
        .isEqualTo("It lost 2.0 % of its weight and its air explains 1.0 to 4.0 %, as it should.");
    assertThat(expected.beside(0.5)).endsWith("it keeps its water well.");
  }

  private static List<AirSpell> month(int temperatureMilliC, int humidityMilliPct) {
    AirSpell half = new AirSpell(temperatureMilliC, humidityMilliPct, Duration.ofDays(15));
    return List.of(half, half);
  }

  private static WeightSeries series(double... dayAndGrams) {
    return new WeightSeries(
        IntStream.range(0, dayAndGrams.length / 2)
            .mapToObj(i -> new Weighing(dayAndGrams[2 * i], dayAndGrams[2 * i + 1]))
            .toList());
  }
}
