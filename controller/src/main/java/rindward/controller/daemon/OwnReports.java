package rindward.controller.daemon;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;

/** What control tells whoever listens in its own process. */
final class OwnReports implements ControlView {
  private final Supplier<@Nullable ControlReport> report;
  private final Runnable look;
  private final List<Consumer<ControlReport>> listeners = new CopyOnWriteArrayList<>();

  /**
   * @param report makes one of what is in memory; null before the first tick
   * @param look looks at the journal
   */
  OwnReports(Supplier<@Nullable ControlReport> report, Runnable look) {
    this.report = report;
    this.look = look;
  }

  /** Tells everybody of the last tick. Control loop thread. */
  void tell() {
    ControlReport latest = listeners.isEmpty() ? null : latest();
    if (latest != null) {
      listeners.forEach(listener -> listener.accept(latest));
    }
  }

  @Override
  public @Nullable ControlReport latest() {
    return report.get();
  }

  @Override
  public @Nullable String silence() {
    return null;
  }

  @Override
  public void lookAtJournal() {
    look.run();
  }

  @Override
  public void eachReport(Consumer<ControlReport> listener) {
    listeners.add(listener);
  }
}
