package rindward.controller.store.copies;

import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rindward.controller.store.Database;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoredChange;
import rindward.controller.store.StoredPerson;

/**
 * Who may sign in after going on from a copy. An old copy knows people who were sent away since,
 * and passwords that were changed because somebody else had them: where the database that is
 * replaced can still be asked, its people stand. Sessions and tokens of the copy are worth nothing
 * in any case: one of them may have been ended for a reason.
 */
final class PeopleAfter {
  private final @Nullable List<StoredPerson> now;

  private PeopleAfter(@Nullable List<StoredPerson> now) {
    this.now = now;
  }

  /** Asks the database that is to be replaced. */
  static PeopleAfter of(Database replaced) {
    try {
      List<StoredPerson> people = new SignInStore(replaced).people();
      return new PeopleAfter(people.isEmpty() ? null : people);
    } catch (StoreException e) {
      return NOT_KNOWN;
    }
  }

  /** Nobody can be asked: the copy's own people stand. */
  static final PeopleAfter NOT_KNOWN = new PeopleAfter(null);

  /** Returns the names of those who may sign in. */
  static List<String> names(Database database) {
    return new SignInStore(database).people().stream().map(StoredPerson::name).toList();
  }

  boolean isKnown() {
    return now != null;
  }

  /**
   * Makes it so in the copy that is about to be used, and notes it in the record of changes.
   *
   * @return the names of those who could sign in when it was made, and cannot any more
   */
  List<String> settle(Database trial, Instant at) {
    SignInStore store = new SignInStore(trial);
    store.tokens().forEach(token -> store.forgetToken(token.hash()));
    List<StoredPerson> then = store.people();
    List<String> leftOut =
        now == null
            ? List.of()
            : then.stream().map(StoredPerson::name).filter(isNoLongerThere(now)).toList();
    leftOut.forEach(store::forget);
    if (now != null) {
      now.forEach(store::keep);
    }
    store.note(
        new StoredChange(
            0,
            at.toEpochMilli(),
            "the board",
            "went on from a copy; every session and token ended"
                + (leftOut.isEmpty() ? "" : "; not brought back: " + String.join(", ", leftOut))));
    return leftOut;
  }

  private static Predicate<String> isNoLongerThere(List<StoredPerson> now) {
    return name -> now.stream().noneMatch(person -> person.name().equals(name));
  }
}
