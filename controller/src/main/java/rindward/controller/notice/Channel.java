package rindward.controller.notice;

import java.io.IOException;

/**
 * A way to reach people. Called by one worker of its own, which it may hold up for some seconds.
 */
public interface Channel {
  /** Returns the name that the settings give it. */
  String name();

  /**
   * Sends one notice.
   *
   * @throws IOException when it is not certain that the notice was taken, in one sentence without
   *     anything secret
   */
  void send(Notice notice) throws IOException;
}
