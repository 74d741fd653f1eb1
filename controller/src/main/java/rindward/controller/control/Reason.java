package rindward.controller.control;

/**
 * Why an output is on or off. The text is made only when somebody reads it.
 *
 * @param because the kind of reason
 * @param first the first value its sentence speaks of, in thousandths
 * @param second the second value, in thousandths
 */
public record Reason(ReasonCode because, int first, int second) {
  /** Returns a reason whose sentence needs no values. */
  public static Reason of(ReasonCode because) {
    return new Reason(because, 0, 0);
  }

  /** Returns the reason as one sentence a grower understands. */
  public String sentence() {
    return because.sentence(first, second);
  }
}
