package rindward.controller.lot;

import java.util.List;
import java.util.Optional;
import rindward.controller.lot.Tasting.SampleCooked;
import rindward.controller.lot.Tasting.Scored;
import rindward.controller.lot.Tasting.Served;
import rindward.controller.lot.Tasting.SessionClosed;
import rindward.controller.lot.Tasting.SessionPlanned;
import rindward.controller.tasting.ClosedSession;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.SessionPlan;

/**
 * A tasting session as it stands.
 *
 * @param planned what was planned, and the seed
 * @param plan what the seed draws
 * @param cooked every fruit that was cooked, in the order in which it was said
 * @param scored every answer, in the order in which it was given
 * @param closed how it ended; empty while it is under way
 */
public record Session(
    SessionPlanned planned,
    SessionPlan plan,
    List<SampleCooked> cooked,
    List<Scored> scored,
    Optional<SessionClosed> closed) {
  public Session {
    cooked = List.copyOf(cooked);
    scored = List.copyOf(scored);
  }

  /** Returns its name. */
  public String name() {
    return planned.session();
  }

  /** Returns what the scores say with the codes opened; empty while it is under way. */
  public Optional<ClosedSession> result() {
    return closed.map(
        end ->
            new ClosedSession(
                plan,
                scored.stream().map(s -> new Score(s.code(), s.attribute(), s.value())).toList()));
  }

  /** Returns the sample of that name. */
  public Optional<Served> sample(String name) {
    return planned.samples().stream().filter(s -> s.name().equals(name)).findFirst();
  }
}
