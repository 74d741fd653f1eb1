package rindward.hardware.shed;

import org.jspecify.annotations.Nullable;

/**
 * One simulated probe.
 *
 * @param room the room it hangs in; any for one outdoors
 * @param lot the lot whose fruit a pulp probe sticks in; null follows the first lot in the room,
 *     and with no fruit such a probe lies in the air
 * @param errors how it departs from the truth
 */
public record ProbePlan(
    String name, String room, ProbePlace place, @Nullable String lot, ProbeErrors errors) {

  /** Returns a probe of usual quality that is not tied to one lot. */
  public static ProbePlan of(String name, String room, ProbePlace place) {
    return new ProbePlan(name, room, place, null, ProbeErrors.USUAL);
  }

  /** Returns the same probe with other errors. */
  public ProbePlan withErrors(ProbeErrors other) {
    return new ProbePlan(name, room, place, lot, other);
  }
}
