package rindward.hardware.shed;

/** Where a simulated probe hangs. */
public enum ProbePlace {
  /** In the stream of the room's air. */
  AIR,
  /** Low in the coldest corner, where the air is colder than elsewhere unless a fan moves it. */
  CORNER,
  /** Stuck into the core of a fruit; it has no humidity. */
  PULP,
  /** Outdoors, in the shade. */
  OUTDOOR
}
