package rindward.controller.room;

/**
 * On what trust a room is heated.
 *
 * @param needsFan whether the heater may only run while the room's circulation fan does, for its
 *     heat is not moved otherwise; false for a heater with a fan of its own
 * @param holdsFrostBlind whether it may go on at half its usual share when no probe can be trusted
 *     and it freezes outside; somebody has to have asked for that
 */
public record HeatTrust(boolean needsFan, boolean holdsFrostBlind) {
  /** Believes in nothing that was not said. */
  public static final HeatTrust USUAL = new HeatTrust(true, false);
}
