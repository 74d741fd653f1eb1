package rindward.controller.diagnosis;

/**
 * One minute of a room, for learning how it answers.
 *
 * @param roomC mean of the room's working temperature
 * @param slowC the same, followed as slowly as fruit and timber do
 * @param outdoorC mean of the outdoor temperature; NaN if unknown
 * @param duty share of the time the heater was commanded on, 0..1
 * @param isVented whether anything was commanded that lets outdoor air in
 */
record RoomSample(double roomC, double slowC, double outdoorC, double duty, boolean isVented) {
  static final int SECONDS = 60;

  /**
   * How slowly the slow temperature follows the air. Judgement: between the hour of walls and
   * crates and the day of whole fruit; of 1.5, 3, 5 and 12 hours this one told the time of crossing
   * best.
   */
  private static final double SLOW_SECONDS = 5400;

  /** Returns where the slow temperature is a minute later. */
  static double slower(double slowC, double roomC) {
    return slowC + (roomC - slowC) * SECONDS / SLOW_SECONDS;
  }

  /** Tells whether this can be learned from. */
  boolean isPlain() {
    return !isVented && Double.isFinite(roomC) && Double.isFinite(outdoorC);
  }
}
