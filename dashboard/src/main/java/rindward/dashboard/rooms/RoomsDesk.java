package rindward.dashboard.rooms;

/** What the rooms page asks of the controller. */
public interface RoomsDesk {

  /**
   * Returns the shed as it is known now. Called from any web thread, so it must be safe to call
   * concurrently, and it should answer from what is in memory.
   */
  NowView now();

  /** Returns the same without the accounts of the lots, which the page does not show. */
  NowView live();
}
