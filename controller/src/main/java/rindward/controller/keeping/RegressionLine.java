package rindward.controller.keeping;

/**
 * The straight line that lies closest to a set of points (least squares), with how sure it is.
 *
 * @param intercept value at zero
 * @param slope rise per unit of the abscissa
 * @param interceptError standard error of the intercept
 * @param slopeError standard error of the slope
 * @param residualDeviation standard deviation of the points about the line
 * @param determination share of the points' variation that the line explains (R squared), 0..1
 * @param points how many points, at least three
 */
public record RegressionLine(
    double intercept,
    double slope,
    double interceptError,
    double slopeError,
    double residualDeviation,
    double determination,
    int points) {

  /**
   * Returns the line through points {@code (x[i], y[i])}. Sums are taken about the means, so that a
   * long way from zero costs no digits.
   *
   * @throws IllegalArgumentException below three points, or if all stand at one abscissa
   */
  public static RegressionLine through(double[] x, double[] y) {
    int n = x.length;
    if (n < 3 || y.length != n) {
      throw new IllegalArgumentException(
          "points were " + n + " and " + y.length + " but there must be three or more, in pairs");
    }
    double meanX = Interval.mean(x);
    double meanY = Interval.mean(y);
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    for (int i = 0; i < n; i++) {
      sxx += (x[i] - meanX) * (x[i] - meanX);
      sxy += (x[i] - meanX) * (y[i] - meanY);
      syy += (y[i] - meanY) * (y[i] - meanY);
    }
    if (sxx == 0) {
      throw new IllegalArgumentException(
          "abscissas were all " + meanX + " but at least two must differ");
    }
    double slope = sxy / sxx;
    double intercept = meanY - slope * meanX;
    double unexplained = 0;
    for (int i = 0; i < n; i++) {
      double residual = y[i] - meanY - slope * (x[i] - meanX);
      unexplained += residual * residual;
    }
    double deviation = Math.sqrt(unexplained / (n - 2));
    return new RegressionLine(
        intercept,
        slope,
        deviation * Math.sqrt(1.0 / n + meanX * meanX / sxx),
        deviation / Math.sqrt(sxx),
        deviation,
        syy == 0 ? 1 : 1 - unexplained / syy,
        n);
  }

  /** Returns Student's interval of the slope. */
  public Interval slopeInterval() {
    return Interval.student(slope, slopeError, points - 2);
  }
}
