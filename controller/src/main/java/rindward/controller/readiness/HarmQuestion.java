package rindward.controller.readiness;

import java.util.Optional;
import rindward.controller.lot.Stop;

/**
 * Was anything found in it that makes people ill? Asked before everything else, of a lot that is
 * used up too: a fruit of it may lie in somebody's kitchen.
 */
final class HarmQuestion implements Question {
  @Override
  public Optional<Verdict> ask(LotCase lot) {
    return Stop.of(lot.lot(), lot.crop())
        .map(
            stop ->
                lot.verdict(
                    State.STOPPED,
                    Optional.empty(),
                    stop.sentences(),
                    stop.isUnread()
                        ? "Running the newer version again would change it."
                        : "Only the owner lifts it, with a reason."));
  }
}
