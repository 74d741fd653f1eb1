package rindward.controller.ledger;

import java.util.function.Consumer;

/** What was measured in one room, wherever it is kept. */
@FunctionalInterface
public interface History {
  /**
   * Hands over, in time order and without overlap, the runs that hold every sample with {@code
   * fromMillis <= at < toMillis}. Runs may reach beyond both ends; whoever counts them clips.
   */
  void forEach(long fromMillis, long toMillis, Consumer<Run> visit);
}
