package rindward.dashboard.shed;

import java.time.Instant;

/** What the shed page asks of the controller. Called from any web thread. */
public interface ShedDesk {

  /** Returns the shed's parts as they are known now, from what is in memory. */
  ShedView shed();

  /**
   * Orders an output on or off until a time.
   *
   * @throws SwitchingRefused when an interlock or a rule forbids it
   */
  void command(ManualCommand command) throws SwitchingRefused;

  /**
   * Lets an output run by itself again; one that does already is left alone.
   *
   * @param by who says so
   * @throws SwitchingRefused when there is no such output
   */
  void release(String room, String kind, String by) throws SwitchingRefused;

  /** Returns the present moment by the controller's clock. */
  Instant now();
}
