package rindward.dashboard.varieties;

/** What the varieties page asks of the controller. Called from any web thread. */
public interface VarietiesDesk {

  /** Returns every variety that came in, by type. */
  VarietiesView varieties();

  /**
   * Notes what becomes of a variety next season; a later decision stands before an earlier one.
   *
   * @param request the same for the same decision sent again
   */
  VarietiesView decide(DecisionRequest decision, String by, String request) throws DecisionRefused;
}
