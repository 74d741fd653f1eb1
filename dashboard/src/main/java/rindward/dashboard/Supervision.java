package rindward.dashboard;

import java.util.List;
import java.util.concurrent.Executor;
import org.slf4j.LoggerFactory;

/**
 * Who looks after what runs by itself here. The server knows nothing of whoever that is; it only
 * takes each turn of such a task through the executor it was given for it.
 */
@FunctionalInterface
public interface Supervision {
  /** Sends pages the latest state. */
  String LIVE_PAGES = "live-pages";

  /** Ends connections that take too long. */
  String CONNECTIONS = "connections";

  /** Every task that runs by itself. */
  List<String> TASKS = List.of(LIVE_PAGES, CONNECTIONS);

  /** Nobody keeps count: what a turn throws is logged, and the next one comes. */
  Supervision NONE =
      task ->
          turn -> {
            try {
              turn.run();
            } catch (RuntimeException | Error e) {
              LoggerFactory.getLogger(Supervision.class).error("Task {} failed", task, e);
            }
          };

  /**
   * Returns what takes each turn of a task, in place, and throws nothing.
   *
   * @param task one of {@link #TASKS}
   */
  Executor of(String task);
}
