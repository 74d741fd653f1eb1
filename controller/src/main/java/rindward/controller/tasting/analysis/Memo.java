package rindward.controller.tasting.analysis;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is worked out when it is first asked, and then kept. For any thread. */
final class Memo<T> {
  private final Supplier<T> work;
  private @Nullable T done;

  Memo(Supplier<T> work) {
    this.work = work;
  }

  synchronized T get() {
    T kept = done;
    if (kept == null) {
      kept = work.get();
      done = kept;
    }
    return kept;
  }
}
