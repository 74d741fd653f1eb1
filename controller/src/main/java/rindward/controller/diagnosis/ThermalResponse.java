package rindward.controller.diagnosis;

import java.util.Optional;

/**
 * How one room answers to the weather and its heater, learned from its own record. Two nodes: the
 * air with what follows it at once, and the slow mass of fruit, crates and timber, for which the
 * air's own slow mean stands. As a difference equation from one minute to the next:
 *
 * <pre>
 * T[n+1] - T[n] = a (T[n] - T[n-1]) + k (To[n+1] - T[n]) + m (S[n] - T[n])
 *                 + h0 u[n+1] + h1 u[n] + h2 u[n-1] + c
 * </pre>
 *
 * T the room, S its slow mean, To outdoors, u the heater's duty; c stands for everything steady:
 * breathing fruit, fan, neighbour, ground.
 *
 * @param a how much of the last change goes on: lag of probe and air
 * @param k pull of the outdoor air
 * @param m pull of the slow mass
 * @param h0 effect of the heater in the same minute, K for full duty
 * @param h1 in the next minute
 * @param h2 in the minute after that
 * @param c steady gain, K a minute
 */
record ThermalResponse(double a, double k, double m, double h0, double h1, double h2, double c) {
  /** With less than half a day of plain samples nothing is said. */
  static final int LEAST_SAMPLES = 720;

  /** A room whose fit is off by more than this in a minute has not been understood. */
  private static final double WORST_FIT_K = 0.5;

  /**
   * Returns the response that fits the record best, by least squares; empty where there is too
   * little of it, or where what fits best is no room (it would grow warmer by losing heat).
   */
  static Optional<ThermalResponse> identify(RoomRecord record) {
    LeastSquares fit = new LeastSquares(7);
    for (int n = 2; n + 1 < record.size(); n++) {
      if (record.isPlain(n)) {
        fit.add(terms(record, n), record.get(n + 1).roomC() - record.get(n).roomC());
      }
    }
    if (fit.count() < LEAST_SAMPLES) {
      return Optional.empty();
    }
    double[] p = fit.solve();
    ThermalResponse response = new ThermalResponse(p[0], p[1], p[2], p[3], p[4], p[5], p[6]);
    return response.isARoom() && fit.errorOf(p) < WORST_FIT_K
        ? Optional.of(response)
        : Optional.empty();
  }

  /** Returns what remains unexplained of the newest step of a record, K. */
  double surprise(RoomRecord record) {
    int n = record.size() - 2;
    double expected = 0;
    double[] terms = terms(record, n);
    double[] p = {a, k, m, h0, h1, h2, c};
    for (int i = 0; i < p.length; i++) {
      expected += p[i] * terms[i];
    }
    return record.get(n + 1).roomC() - record.get(n).roomC() - expected;
  }

  /** Returns the change of the next step under a steady duty. */
  double change(double beforeC, double nowC, double slowC, double nextOutdoorC, double duty) {
    return a * (nowC - beforeC)
        + k * (nextOutdoorC - nowC)
        + m * (slowC - nowC)
        + (h0 + h1 + h2) * duty
        + c;
  }

  private static double[] terms(RoomRecord record, int n) {
    RoomSample now = record.get(n);
    return new double[] {
      now.roomC() - record.get(n - 1).roomC(),
      record.get(n + 1).outdoorC() - now.roomC(),
      now.slowC() - now.roomC(),
      record.get(n + 1).duty(),
      now.duty(),
      record.get(n - 1).duty(),
      1
    };
  }

  /** Heat must flow from warm to cold, and nothing may grow by itself. */
  private boolean isARoom() {
    return k > 0 && k + m > 0 && Math.abs(a) < 1 && 2 + 2 * a - k - m > 0 && h0 + h1 + h2 >= 0;
  }
}
