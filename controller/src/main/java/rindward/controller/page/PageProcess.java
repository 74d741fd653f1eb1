package rindward.controller.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.control.Tick;
import rindward.controller.daemon.ShutdownStack;
import rindward.controller.daemon.Time;
import rindward.controller.link.ControlReport;
import rindward.controller.link.HeardControl;
import rindward.controller.link.SocketPlace;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.StoreException;
import rindward.controller.task.Cadence;
import rindward.controller.task.TaskSupervisor;

/**
 * The page in a process of its own: hears of control over the local socket, shares the record with
 * it, and ends by itself when the record was put in another's place, for then nothing that it
 * remembers is true any more; whoever started it starts it anew.
 */
public final class PageProcess implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(PageProcess.class);
  private static final Duration LEAST_PATIENCE = Duration.ofSeconds(15);
  private static final int PATIENCE_TICKS = 3;
  private static final long BETWEEN_LOOKS_MILLIS = 200;

  private final Settings settings;
  private final Database database;
  private final Page page;
  private final ShutdownStack ending = new ShutdownStack();
  private final CountDownLatch over = new CountDownLatch(1);
  private volatile @Nullable Object record;
  private volatile boolean isReplaced;

  /**
   * @param own the clocks of this machine; what day it is, control says
   */
  public PageProcess(Settings settings, Time own) {
    this.settings = settings;
    this.database = Database.ofAnother(settings.store());
    Duration ticks = settings.tick().multipliedBy(PATIENCE_TICKS);
    HeardControl control =
        new HeardControl(
            SocketPlace.of(settings.store()),
            ticks.compareTo(LEAST_PATIENCE) > 0 ? ticks : LEAST_PATIENCE,
            () -> own.now().nanos());
    Time time = () -> controls(own.now(), control.latest());
    TaskSupervisor tasks = new TaskSupervisor(() -> time.now().at(), System::nanoTime);
    this.page = new Page(settings, control, time, database, tasks);
    ending.add("page", page::close);
    ending.add("control", control::close);
    control.eachSilence(page::show);
    tasks
        .task("control-link", Cadence.every(Duration.ofMillis(1)))
        .start(
            ending.taskThread("control-link"),
            () -> {
              control.turn();
              lookAtRecord();
            });
  }

  /**
   * Begins to serve once control has made the record.
   *
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   * @return the port that is listened on; 0 when it was closed before
   * @throws IllegalStateException when the address cannot be listened on, or certificate or key
   *     cannot be used
   */
  public int open(Consumer<String> announce) throws InterruptedException {
    String told = "";
    while (true) {
      try {
        database.open();
        break;
      } catch (StoreException e) {
        String why = String.valueOf(e.getMessage());
        if (!why.equals(told)) {
          told = why;
          LOG.info("The page waits: {}", why);
        }
      }
      if (over.await(BETWEEN_LOOKS_MILLIS, TimeUnit.MILLISECONDS)) {
        return 0;
      }
    }
    page.open(announce);
    return page.port();
  }

  /** Returns what it shows. */
  Page page() {
    return page;
  }

  /**
   * Waits until it is closed.
   *
   * @return whether it was; otherwise the record was replaced
   */
  public boolean awaitEnd() throws InterruptedException {
    over.await();
    return !isReplaced;
  }

  /** Ends everything. Safe to call twice. */
  @Override
  public void close() {
    over.countDown();
    ending.close();
  }

  /** One shed has one time: what is said by the page's would be void by another of control's. */
  private static Tick controls(Tick own, @Nullable ControlReport latest) {
    return latest == null
        ? own
        : new Tick(latest.told().at().plusNanos(own.nanos() - latest.told().nanos()), own.nanos());
  }

  /** Another file in its place is another record. */
  private void lookAtRecord() throws IOException {
    Path store = settings.store();
    if (!Files.exists(store)) {
      return;
    }
    Object now = Files.readAttributes(store, BasicFileAttributes.class).fileKey();
    Object known = record;
    if (known == null) {
      record = now;
    } else if (!known.equals(now)) {
      isReplaced = true;
      over.countDown();
    }
  }
}
