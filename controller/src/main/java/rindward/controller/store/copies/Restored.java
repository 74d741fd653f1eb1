package rindward.controller.store.copies;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What going on from a copy came to.
 *
 * @param before where that is which was there before; empty when there was nothing
 * @param mayWork the names of those who may sign in from now on; each must do so anew
 * @param leftOut the names of those who could when the copy was made, and were removed since
 * @param isPeopleKnown whether the database that was replaced could tell who is removed; if not,
 *     the copy's people stand
 */
public record Restored(
    Optional<Path> before, List<String> mayWork, List<String> leftOut, boolean isPeopleKnown) {

  public Restored {
    mayWork = List.copyOf(mayWork);
    leftOut = List.copyOf(leftOut);
  }
}
