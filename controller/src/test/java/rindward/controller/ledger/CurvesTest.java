package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;
import rindward.hardware.air.StandardAtmosphere;

/** A thinned line shows fewer points and the same extremes. */
class CurvesTest {
  private static final long SECOND = 1_000;
  private static final long MINUTE = 60 * SECOND;
  private static final int NONE = Thousandths.NONE;

  @Test
  void of_slotsShorterThanTheSamples_keepsEverySample() {
    Curves curves = Curves.of(temperatures(20_000, 21_000, 20_500), 0, MINUTE, SECOND, MINUTE);
    assertThat(curves.temperature().atMillis()).containsExactly(0, 10_000, 20_000);
    assertThat(curves.temperature().value()).containsExactly(20_000, 21_000, 20_500);
  }

  @Test
  void of_oneSlot_keepsTheLowestAndTheHighestAtTheirOwnInstants() {
    Curves curves =
        Curves.of(temperatures(20_000, 25_000, 21_000, 18_000, 20_000), 0, MINUTE, MINUTE, MINUTE);
    assertThat(curves.temperature().atMillis()).containsExactly(10_000, 30_000);
    assertThat(curves.temperature().value()).containsExactly(25_000, 18_000);
  }

  @Test
  void of_aGapLongerThanASampleHolds_breaksOffWhereTheLastOneEnds() {
    History history =
        (from, to, visit) -> {
          visit.accept(Run.of(0, 20_000, 60_000));
          visit.accept(Run.of(20 * MINUTE, 21_000, 60_000));
        };
    CurveLine line = Curves.of(history, 0, 60 * MINUTE, MINUTE, 5 * MINUTE).temperature();
    assertThat(line.atMillis()).containsExactly(0, 5 * MINUTE, 20 * MINUTE);
    assertThat(line.value()).containsExactly(20_000, NONE, 21_000);
  }

  @Test
  void of_aHumidityThatIsMissing_breaksHumidityAndDewPointButNotTemperature() {
    History history = run(new int[] {20_000, 20_010, 20_020}, new int[] {60_000, NONE, 61_000});
    Curves curves = Curves.of(history, 0, MINUTE, SECOND, MINUTE);
    assertThat(curves.temperature().value()).containsExactly(20_000, 20_010, 20_020);
    assertThat(curves.humidity().value()).containsExactly(60_000, NONE, 61_000);
    assertThat(curves.dewPoint().value()).hasSize(3).contains(NONE);
  }

  @Test
  void of_samplesOutsideTheStretch_areLeftOut() {
    CurveLine line =
        Curves.of(temperatures(1_000, 2_000, 3_000, 4_000), 10_000, 30_000, SECOND, MINUTE)
            .temperature();
    assertThat(line.value()).containsExactly(2_000, 3_000);
  }

  /** ASHRAE Fundamentals 2017 ch. 1: moist air at 25 C and 50 % has its dew point at 13.87 C. */
  @Test
  void dewPoint_isThatOfThePublishedTable() {
    CurveLine line =
        Curves.of(run(new int[] {25_000}, new int[] {50_000}), 0, MINUTE, SECOND, MINUTE)
            .dewPoint();
    assertThat(line.value()[0]).isCloseTo(13_870, within(20));
  }

  @Seeded(cases = 300)
  void everyExtremeOfEverySlotIsOnTheLineAndNothingIsInvented(Any any) {
    List<Integer> tenths = any.list(1, 400, () -> any.intBetween(-100, 400));
    int samplesInSlot = any.intBetween(1, 60);
    int[] values = tenths.stream().mapToInt(t -> t * 100).toArray();
    long slot = samplesInSlot * 10 * SECOND;
    CurveLine line =
        Curves.of(temperatures(values), 0, values.length * 10L * SECOND, slot, MINUTE)
            .temperature();
    for (int i = 0; i < line.size(); i++) {
      assertThat(line.value()[i]).isEqualTo(values[(int) (line.atMillis()[i] / (10 * SECOND))]);
      assertThat(i == 0 || line.atMillis()[i - 1] < line.atMillis()[i]).isTrue();
    }
    for (int start = 0; start < values.length; start += samplesInSlot) {
      List<Integer> inSlot = new ArrayList<>();
      for (int i = start; i < Math.min(values.length, start + samplesInSlot); i++) {
        inSlot.add(values[i]);
      }
      List<Integer> drawn = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        if (line.atMillis()[i] / slot == start / samplesInSlot) {
          drawn.add(line.value()[i]);
        }
      }
      assertThat(drawn).hasSizeLessThanOrEqualTo(2);
      assertThat(java.util.Collections.min(drawn)).isEqualTo(java.util.Collections.min(inSlot));
      assertThat(java.util.Collections.max(drawn)).isEqualTo(java.util.Collections.max(inSlot));
    }
  }

  @Seeded(cases = 200)
  void theDewPointIsThatOfTheSampleToAHundredth(Any any) {
    int tenthC = any.intBetween(-100, 400);
    int tenthPct = any.intBetween(50, 1_000);
    History history = run(new int[] {tenthC * 100}, new int[] {tenthPct * 100});
    int dewPoint = Curves.of(history, 0, MINUTE, SECOND, MINUTE).dewPoint().value()[0];
    MoistAir air = new MoistAir(tenthC / 10.0, tenthPct / 10.0, StandardAtmosphere.pressurePa(200));
    assertThat(dewPoint / 1000.0).isCloseTo(air.dewPointC(), within(0.005));
  }

  @Test
  void of_slotOfNoLength_isRefused() {
    assertThatThrownBy(() -> Curves.of(temperatures(1), 0, 1, 0, 1))
        .hasMessage("a slot was 0 ms and the hold limit 1 ms but both must be above zero");
  }

  private static History temperatures(int... values) {
    int[] humidities = new int[values.length];
    java.util.Arrays.fill(humidities, 60_000);
    return run(values, humidities);
  }

  private static History run(int[] temperatures, int[] humidities) {
    return (from, to, visit) ->
        visit.accept(new Run(0, 10_000, temperatures.length, temperatures, humidities));
  }
}
