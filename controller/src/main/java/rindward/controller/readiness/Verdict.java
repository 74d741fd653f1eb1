package rindward.controller.readiness;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What to do with a lot, and why.
 *
 * @param state in one word
 * @param phase how it eats now, where its type has phases; more than one if the guide cannot tell;
 *     or why it does not cure
 * @param expected what is expected next, and when
 * @param reasons each one sentence, the weightiest first
 * @param wouldChange what would change it, one sentence
 * @param sureness how sure it is
 * @param yardstick which figures it was judged by
 */
public record Verdict(
    State state,
    Optional<String> phase,
    Optional<Expected> expected,
    List<String> reasons,
    String wouldChange,
    Sureness sureness,
    Yardstick yardstick) {
  public Verdict {
    reasons = List.copyOf(reasons);
  }

  /** Returns what to do in a few words, such as {@code not curing: too cold (needs 27 C)}. */
  public String words() {
    return state + phase.map(named -> ": " + named).orElse("");
  }

  /** Returns the same verdict with the phase in which it is. */
  Verdict in(String named) {
    return new Verdict(
        state, Optional.of(named), expected, reasons, wouldChange, sureness, yardstick);
  }

  /**
   * Something expected, between two instants.
   *
   * @param what ends a sentence that begins with the dates, such as "cured"
   */
  public record Expected(String what, Instant from, Instant to) {}
}
