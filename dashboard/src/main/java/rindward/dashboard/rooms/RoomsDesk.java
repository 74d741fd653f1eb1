package rindward.dashboard.rooms;

/** What the rooms page asks of the controller. */
public interface RoomsDesk {

  /**
   * Returns the shed as it is known now. Called from any web thread, so it must be safe to call
   * concurrently, and it should answer from what is in memory.
   */
  NowView now();
}
