package rindward.dashboard.varieties;

import rindward.dashboard.request.Page;

/** What the varieties page asks of the controller. Called from any web thread. */
public interface VarietiesDesk {

  /** Returns a page of the varieties that came in, by type. */
  VarietiesView varieties(Page page);

  /**
   * Notes what becomes of a variety next season; a later decision stands before an earlier one.
   * Returns that variety alone.
   *
   * @param request the same for the same decision sent again
   */
  VarietiesView decide(DecisionRequest decision, String by, String request) throws DecisionRefused;
}
