package rindward.controller.store.copies;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A place for copies besides the folder beside the database: a fire, a thief or a dead card takes
 * what lies together at once. Slow; for a thread that has nothing else to do.
 */
public interface SecondPlace {
  /**
   * Takes a copy there, reads it back, and then lets go of those that are not kept any longer.
   *
   * @param copy a finished copy
   * @throws IOException in one sentence; what there was before is still there
   */
  void take(Path copy) throws IOException, InterruptedException;
}
