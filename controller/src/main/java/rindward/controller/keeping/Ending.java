package rindward.controller.keeping;

/** How a fruit's time under watch ended. */
public enum Ending {
  /** It rotted, softened, sprouted, or was eaten because it was failing. */
  LOST,
  /** A mouse, a blow or a frost took it: that says nothing of how it keeps. */
  ACCIDENT,
  /** It was eaten, sold or given away while sound: it would have kept for longer. */
  USED_SOUND,
  /** It was still sound when last looked at. */
  STILL_SOUND,
  /** A recount missed it; it was sound when last seen. */
  UNACCOUNTED;

  /** Tells whether the fruit failed; all others only left the watch. */
  public boolean isLoss() {
    return this == LOST;
  }
}
