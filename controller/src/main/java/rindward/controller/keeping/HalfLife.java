package rindward.controller.keeping;

/**
 * The day by which half of a lot would have been lost had none been eaten.
 *
 * @param state whether there is such a day
 * @param day the first day with half or fewer left; the last day watched if it was not reached
 */
public record HalfLife(State state, int day) {
  /** Whether a half-life can be told. */
  public enum State {
    /** Half of the fruits were lost by that day. */
    REACHED,
    /** More than half are still sound by all that was seen. */
    NOT_REACHED,
    /** The curve fell to half on too few losses to believe it. */
    TOO_FEW_LOST
  }

  /** Returns the half-life as part of a sentence. */
  public String words() {
    return switch (state) {
      case REACHED -> "half-life " + day + " days";
      case NOT_REACHED ->
          day == 0 ? "too early for a half-life" : "half-life not reached by day " + day;
      case TOO_FEW_LOST -> "too few lost to tell a half-life";
    };
  }
}
