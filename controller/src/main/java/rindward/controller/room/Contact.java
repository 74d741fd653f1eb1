package rindward.controller.room;

/** What switches an output, and so how often it may be switched. */
public enum Contact {
  /** A mechanical contact: every switching wears it, so it stays as it is for its minimum times. */
  RELAY,
  /** A solid-state relay: it may be switched at every tick, so an output can be given in shares. */
  SOLID_STATE
}
