package rindward.controller.readiness;

import java.util.Optional;
import rindward.controller.tasting.analysis.EatingWindow;

/**
 * What a grower's own fruits of one variety have shown. Each of the two stands before the guide
 * only once it rests on enough, which it knows itself; until then it is told and not used.
 *
 * @param life how long they kept; empty if none was watched
 * @param window when they ate best; empty if none was tasted
 */
public record OwnRecord(Optional<OwnLife> life, Optional<EatingWindow> window) {
  /** Nothing was ever seen of the variety. */
  public static final OwnRecord NONE = new OwnRecord(Optional.empty(), Optional.empty());

  /** Tells whether the life that counts ended only because nobody watched longer. */
  boolean isLifeOpen() {
    return life.filter(OwnLife::isOpen).isPresent();
  }

  /** Returns whose figure a life is, as the end of a sentence about it. */
  String lifeWords() {
    return life.flatMap(OwnLife::days).isPresent() ? " (by your own fruits)" : "";
  }
}
