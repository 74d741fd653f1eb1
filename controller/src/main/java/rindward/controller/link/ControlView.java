package rindward.controller.link;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * All that a page has of control, wherever control runs: what it told last, and a way to say "look
 * at the journal now". Nothing that is switched is within its reach. For any thread; no method
 * waits for control.
 */
public interface ControlView {

  /** Returns what control told last; null before it has told anything. */
  @Nullable ControlReport latest();

  /** Returns why nothing newer is heard of control, in one sentence; null while all is well. */
  @Nullable String silence();

  /**
   * Asks control to look at the journal now instead of within a second. It may be busy or gone:
   * what stands in the journal counts all the same.
   */
  void lookAtJournal();

  /**
   * Hands over each report from now on, one after the other.
   *
   * @param listener must not wait for anything
   */
  void eachReport(Consumer<ControlReport> listener);
}
