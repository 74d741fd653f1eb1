package rindward.controller.readiness;

import java.util.Optional;

/**
 * One question about a lot. The first one, in the order of {@link Readiness}, that has an answer
 * gives the verdict.
 */
@FunctionalInterface
interface Question {
  Optional<Verdict> ask(LotCase lot);
}
