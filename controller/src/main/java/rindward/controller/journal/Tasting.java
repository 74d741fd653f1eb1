package rindward.controller.journal;

/**
 * Something said of a tasting session. Who gets which cup under which code is never written down:
 * it is drawn again from the session's seed.
 */
public sealed interface Tasting extends Entry
    permits SessionPlanned, SampleCooked, Scored, SessionClosed, UsesTicked, TakenBack {
  /** Returns the session's name. */
  String session();

  @Override
  default String subject() {
    return "session " + session();
  }
}
