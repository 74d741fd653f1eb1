package rindward.controller.lot;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Harm;

/**
 * A finding that may make people ill, in one fruit of a lot.
 *
 * @param lot code of the lot
 * @param fruit which fruit; null if nobody can say
 * @param session in which it was found; null for a kitchen
 * @param sample its name in the session; null for a kitchen
 * @param entry id of the entry that says so
 */
public record HarmFound(
    Harm harm,
    String lot,
    @Nullable String fruit,
    @Nullable String session,
    @Nullable String sample,
    long entry,
    Instant at) {

  /** Returns it as one sentence. */
  public String sentence() {
    return (fruit == null ? "A fruit" : "Fruit " + fruit)
        + (harm == Harm.MOULD || harm == Harm.ROT ? " had " + harm + " inside" : " was " + harm)
        + (session == null ? "" : ", said in session " + session)
        + ".";
  }
}
