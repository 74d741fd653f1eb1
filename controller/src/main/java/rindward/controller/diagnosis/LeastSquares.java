package rindward.controller.diagnosis;

/**
 * Least squares by the normal equations, with a little ridge: of several answers that explain a
 * record nearly as well it takes the one with the smallest numbers, and a column that never moved
 * (a heater that never ran) gets 0.
 */
final class LeastSquares {
  private static final double RIDGE = 1e-5;

  private final double[][] normal;
  private final double[] right;
  private double squares;
  private int count;

  LeastSquares(int unknowns) {
    normal = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /** Adds one equation: the terms, each times its unknown, sum up to the value. */
  void add(double[] terms, double value) {
    for (int i = 0; i < terms.length; i++) {
      for (int j = 0; j < terms.length; j++) {
        normal[i][j] += terms[i] * terms[j];
      }
      right[i] += terms[i] * value;
    }
    squares += value * value;
    count++;
  }

  int count() {
    return count;
  }

  /** Returns the unknowns that leave the least squared error. */
  double[] solve() {
    int n = right.length;
    double[][] m = new double[n][];
    double[] x = right.clone();
    for (int i = 0; i < n; i++) {
      m[i] = normal[i].clone();
      m[i][i] += RIDGE * count;
    }
    // Gauss without pivoting: the matrix is symmetric and positive definite.
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        double factor = m[j][i] / m[i][i];
        for (int column = i; column < n; column++) {
          m[j][column] -= factor * m[i][column];
        }
        x[j] -= factor * x[i];
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        x[i] -= m[i][j] * x[j];
      }
      x[i] /= m[i][i];
    }
    return x;
  }

  /** Returns the root of the mean squared error that these unknowns leave. */
  double errorOf(double[] unknowns) {
    double left = squares;
    for (int i = 0; i < unknowns.length; i++) {
      left -= unknowns[i] * right[i];
    }
    return Math.sqrt(Math.max(0, left) / Math.max(1, count));
  }
}
