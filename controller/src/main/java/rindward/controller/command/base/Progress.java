package rindward.controller.command.base;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A bar on a terminal while something long runs; nothing where nobody looks. */
public final class Progress implements AutoCloseable {
  private static final int MILLIS_BETWEEN_UPDATES = 200;

  private final @Nullable ProgressBar bar;

  /**
   * @param isWatched whether a person looks on
   */
  public Progress(String task, long steps, String unit, boolean isWatched) {
    bar =
        isWatched
            ? new ProgressBarBuilder()
                .setTaskName(task)
                .setInitialMax(steps)
                .setUnit(" " + unit, 1)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(MILLIS_BETWEEN_UPDATES)
                .setConsumer(new ConsoleProgressBarConsumer(System.err))
                .build()
            : null;
  }

  /** Tells whether the error stream is a terminal that a person may be looking at. */
  public static boolean isSomebodyThere() {
    return System.console() != null;
  }

  /** One step more. Any thread. */
  public void step() {
    if (bar != null) {
      bar.step();
    }
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
    }
  }
}
