package rindward.hardware.shed;

/**
 * Outdoor air that enters a room by leaks, by the exhaust fan and through a door left open. Fan and
 * leaks share the same gaps and add as squares (ASHRAE Fundamentals 2017 ch. 16, unbalanced fans).
 * An open door exchanges Cd A/3 sqrt(g H dT/T), Cd 0.6, A = 0.8 m x 1.9 m times its opening, H 1.9
 * m (Brown and Solvason 1962), and at least what 0.1 m/s of draught carries.
 */
final class Ventilation {
  private static final double DOOR_M2 = 0.8 * 1.9;
  private static final double DOOR_HEIGHT_M = 1.9;
  private static final double DISCHARGE = 0.6;
  private static final double GRAVITY = 9.81;
  private static final double DRAUGHT_M_PER_S = 0.1;

  private Ventilation() {}

  /** Returns the flow in m3/s of room air that is replaced. */
  static double m3PerS(RoomPlan plan, RoomInputs on, OutdoorAir outdoor, double airC) {
    double leak = plan.envelope().leakagePerHour(outdoor.windMPerS()) * plan.volumeM3() / 3600;
    double fan = on.exhaust * plan.equipment().exhaustM3PerS();
    double flow = fan > 0 ? Math.sqrt(fan * fan + leak * leak) : leak;
    return on.doorOpen > 0 ? flow + door(on.doorOpen, airC, outdoor.temperatureC()) : flow;
  }

  private static double door(double share, double airC, double outdoorC) {
    double meanKelvin = (airC + outdoorC) / 2 + Water.ZERO_C_IN_KELVIN;
    double buoyancy = Math.sqrt(GRAVITY * DOOR_HEIGHT_M * Math.abs(airC - outdoorC) / meanKelvin);
    return DOOR_M2 * share * Math.max(DISCHARGE / 3 * buoyancy, DRAUGHT_M_PER_S);
  }
}
