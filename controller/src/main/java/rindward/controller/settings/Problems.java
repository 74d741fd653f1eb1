package rindward.controller.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Everything that is wrong in the files read so far. A reader adds and goes on, so that a person
 * mends a file in one round. What was read may be used only while this is empty. For one thread.
 */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  /** Adds one problem. */
  public void add(Problem problem) {
    found.add(problem);
  }

  /** Tells whether everything was well so far. */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** Returns how many were found so far; a reader compares two counts to judge its own part. */
  public int count() {
    return found.size();
  }

  /** Returns all problems, by file, then from the top of the file down. */
  public List<Problem> list() {
    return found.stream()
        .sorted(
            Comparator.comparing(Problem::file)
                .thenComparing(Problem::line)
                .thenComparing(Problem::column))
        .toList();
  }
}
