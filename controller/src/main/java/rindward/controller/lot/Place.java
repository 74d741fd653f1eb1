package rindward.controller.lot;

import java.util.Optional;
import rindward.controller.journal.Entry;

/**
 * Where a kind of entry stands in the story: what must be true of its subject before its fields are
 * looked at, what must be true of both then, and what it does to its lot.
 *
 * @param <E> the entry
 */
record Place<E extends Entry>(Rule<E> first, Rule<E> then, Telling<E> telling) {
  /** Why an entry cannot stand beside what stands; nothing if it can. */
  interface Rule<E> {
    Optional<String> refusal(Standing standing, E entry);
  }

  /** What an entry does to the lot that is being told. */
  interface Telling<E> {
    void tell(LotStory story, E entry);
  }

  /** Anywhere, with no effect on a lot. */
  static <E extends Entry> Place<E> anywhere() {
    return new Place<>(
        (standing, entry) -> Optional.empty(), (s, e) -> Optional.empty(), (s, e) -> {});
  }

  /** Asks this before the fields. */
  Place<E> first(Rule<E> rule) {
    return new Place<>(rule, then, telling);
  }

  /** Asks this when the fields are right. */
  Place<E> then(Rule<E> rule) {
    return new Place<>(first, rule, telling);
  }

  /** Tells its lot so. */
  Place<E> told(Telling<E> how) {
    return new Place<>(first, then, how);
  }
}
