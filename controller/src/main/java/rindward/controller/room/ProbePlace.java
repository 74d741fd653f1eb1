package rindward.controller.room;

/** Where a probe hangs. */
public enum ProbePlace {
  /** In the room's air. */
  AIR,
  /** In the room's air, at its coldest low spot. */
  CORNER,
  /** In a fruit. */
  PULP,
  /** Outdoors in the shade; belongs to no room. */
  OUTDOOR
}
