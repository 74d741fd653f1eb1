package rindward.hardware.shed;

/**
 * Water vapour in the air of one room, tied to everything that gives or takes it:
 *
 * <pre>K dp/dt = S + sum g (p_x - p)</pre>
 *
 * K = V / (Rw T_ref) in kg/Pa, S in kg/s, g in kg/(s Pa), p in Pa. With S, g and p_x held over a
 * step the solution is exact: p runs exponentially to p_inf = (S + sum g p_x) / sum g. Flows use
 * the mean pressure of the step, so water in less water out is what the air gained, to rounding.
 */
final class RoomVapour {
  private final double capacityKgPerPa;
  private double vapourPa;
  private double conductanceKgPerSPa;
  private double sourceKgPerS;

  RoomVapour(double volumeM3, double referenceC, double vapourPa) {
    capacityKgPerPa = volumeM3 / (Water.GAS_CONSTANT * (referenceC + Water.ZERO_C_IN_KELVIN));
    this.vapourPa = vapourPa;
  }

  void begin() {
    conductanceKgPerSPa = 0;
    sourceKgPerS = 0;
  }

  /** Ties the air to a place of another vapour pressure. */
  void exchange(double kgPerSPa, double pressurePa) {
    conductanceKgPerSPa += kgPerSPa;
    sourceKgPerS += kgPerSPa * pressurePa;
  }

  /** Adds a flow that does not depend on the air; negative takes water out. */
  void source(double kgPerS) {
    sourceKgPerS += kgPerS;
  }

  /** Takes one step and returns the mean vapour pressure over it in Pa. */
  double step(double dtSeconds) {
    double before = vapourPa;
    if (conductanceKgPerSPa == 0) {
      vapourPa += sourceKgPerS * dtSeconds / capacityKgPerPa;
      return (before + vapourPa) / 2;
    }
    double finalPa = sourceKgPerS / conductanceKgPerSPa;
    double exponent = conductanceKgPerSPa * dtSeconds / capacityKgPerPa;
    // p(dt) - p(0) = (p_inf - p(0)) (1 - e^-x), and the mean follows from the balance.
    double change = -(finalPa - before) * Math.expm1(-exponent);
    vapourPa = before + change;
    return finalPa - change / exponent;
  }

  double vapourPa() {
    return vapourPa;
  }

  double massKg() {
    return capacityKgPerPa * vapourPa;
  }

  double capacityKgPerPa() {
    return capacityKgPerPa;
  }

  /** Takes water out of the air at once. */
  void take(double kg) {
    vapourPa -= kg / capacityKgPerPa;
  }
}
