package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The straight line against NIST's Statistical Reference Datasets, linear regression, Norris: 36
 * points with certified values (itl.nist.gov/div898/strd/lls/data/Norris.shtml).
 */
class RegressionLineTest {
  private static final double[] Y = {
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
    339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5,
    778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
  };
  private static final double[] X = {
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
    666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
    999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
  };

  private final RegressionLine norris = RegressionLine.through(X, Y);

  @Test
  void slopeAndInterceptAreNistsToTwelveDigits() {
    assertThat(norris.slope()).isCloseTo(1.00211681802045, within(1e-12));
    assertThat(norris.intercept()).isCloseTo(-0.262323073774029, within(1e-11));
    assertThat(norris.determination()).isCloseTo(0.999993745883712, within(1e-12));
  }

  @Test
  void errorsAreNists() {
    assertThat(norris.slopeError()).isCloseTo(0.000429796848199937, within(1e-13));
    assertThat(norris.interceptError()).isCloseTo(0.232818234301152, within(1e-11));
    assertThat(norris.residualDeviation()).isCloseTo(0.884796396144373, within(1e-11));
  }

  @Test
  void slopeInterval_reachesStudentsTTimesTheErrorToBothSides() {
    // t for 34 degrees of freedom, upper 2.5 %: 2.0322 in every printed table.
    Interval interval = norris.slopeInterval();
    assertThat((interval.high() - interval.low()) / 2 / norris.slopeError())
        .isCloseTo(2.0322, within(0.00005));
  }

  @Test
  void through_twoPointsOrOneAbscissa_isRefused() {
    assertThatThrownBy(() -> RegressionLine.through(new double[] {1, 2}, new double[] {1, 2}))
        .hasMessageContaining("three or more");
    assertThatThrownBy(() -> RegressionLine.through(new double[] {4, 4, 4}, new double[] {1, 2, 3}))
        .hasMessage("abscissas were all 4.0 but at least two must differ");
  }
}
