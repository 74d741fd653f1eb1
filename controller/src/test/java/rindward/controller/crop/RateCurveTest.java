package rindward.controller.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;

class RateCurveTest {
  private static final long MILLIS_PER_DAY = 86_400_000L;

  @Test
  void theStatedDaysAreEnoughAndHardlyMore() {
    for (int days : new int[] {1, 6, 7, 8, 10, 14, 18, 20, 21, 54, 365}) {
      long rate = RatePoint.wholeCureIn(27_000, days * 1000).femtoPerMilli();
      assertThat(rate * MILLIS_PER_DAY * days).isGreaterThanOrEqualTo(RateCurve.WHOLE);
      assertThat((rate - 1) * MILLIS_PER_DAY * days).isLessThan(RateCurve.WHOLE);
    }
  }

  @Test
  void halfWayBetweenTwoPoints_theRateIsHalfWay() {
    RateCurve curve = curve(new RatePoint(15_000, 0), new RatePoint(21_000, 800_000));
    assertThat(curve.femtoPerMilli(18_000)).isEqualTo(400_000);
    assertThat(curve.femtoPerMilli(15_000)).isZero();
    assertThat(curve.femtoPerMilli(21_000)).isEqualTo(800_000);
  }

  @Test
  void outsideTheStatedPoints_nothingIsEarned() {
    RateCurve curve = curve(new RatePoint(24_000, 500), new RatePoint(35_000, 700));
    assertThat(curve.femtoPerMilli(23_999)).isZero();
    assertThat(curve.femtoPerMilli(24_000)).isEqualTo(500);
    assertThat(curve.femtoPerMilli(35_000)).isEqualTo(700);
    assertThat(curve.femtoPerMilli(35_001)).isZero();
    assertThat(curve.minimumWithin(34_000, 36_000)).isZero();
    assertThat(curve.maximumWithin(34_000, 36_000)).isEqualTo(700);
  }

  @Test
  void pointsOutOfOrder_areRefused() {
    assertThatThrownBy(() -> curve(new RatePoint(21_000, 1), new RatePoint(15_000, 2)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("points went from 21000 to 15000 but they must run from cold to warm");
  }

  @Seeded
  void theRateIsNeverNegative(Any any) {
    RateCurve curve = curve(any);
    int t = any.intBetween(-50_000, 70_000);
    assertThat(curve.femtoPerMilli(t)).isNotNegative();
  }

  @Seeded
  void betweenTwoPoints_theRateLiesOnTheirLine(Any any) {
    RateCurve curve = curve(any);
    int share = any.intBetween(0, 1_000);
    for (int i = 1; i < curve.points().size(); i++) {
      RatePoint a = curve.points().get(i - 1).value();
      RatePoint b = curve.points().get(i).value();
      long run = b.temperatureMilliC() - a.temperatureMilliC();
      long along = run * share / 1_000;
      long above = curve.femtoPerMilli((int) (a.temperatureMilliC() + along)) - a.femtoPerMilli();
      long rise = b.femtoPerMilli() - a.femtoPerMilli();
      // Rounded down to a whole unit: less than one below the line, never above it.
      assertThat(rise * along - above * run).isBetween(0L, run - 1);
    }
  }

  @Seeded
  void leastAndMostWithinAnInterval_boundEveryRateInItAndAreReached(Any any) {
    RateCurve curve = curve(any);
    int low = any.intBetween(-5_000, 65_000);
    int width = any.intBetween(0, 300);
    List<Long> rates = new ArrayList<>();
    for (int t = low; t <= low + width; t++) {
      rates.add(curve.femtoPerMilli(t));
    }
    assertThat(curve.minimumWithin(low, low + width))
        .isEqualTo(rates.stream().mapToLong(rate -> rate).min().orElseThrow());
    assertThat(curve.maximumWithin(low, low + width))
        .isEqualTo(rates.stream().mapToLong(rate -> rate).max().orElseThrow());
  }

  /** Two to six points at different temperatures. */
  private static RateCurve curve(Any any) {
    int points = any.intBetween(2, 6);
    Set<Integer> temperatures = new TreeSet<>();
    while (temperatures.size() < points) {
      temperatures.add(any.intBetween(0, 60_000));
    }
    return curve(
        temperatures.stream()
            .map(at -> new RatePoint(at, any.longBetween(0, 200_000_000)))
            .toArray(RatePoint[]::new));
  }

  private static RateCurve curve(RatePoint... points) {
    return new RateCurve(
        List.of(points).stream().map(p -> new Cited<>(p, List.of(Sources.FROM_MEMORY))).toList());
  }
}
