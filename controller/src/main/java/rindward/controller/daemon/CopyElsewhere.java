package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.settings.Elsewhere;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.StoredEvent;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.copies.OtherFolder;
import rindward.controller.store.copies.OtherMachine;
import rindward.controller.store.copies.SecondPlace;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThread;

/**
 * Takes each new copy to the second place, and says when none has come there for too long. A stick
 * that is plugged in on Sundays, or a machine that is off at night, is no trouble before that.
 */
final class CopyElsewhere {
  private static final Logger LOG = LoggerFactory.getLogger(CopyElsewhere.class);

  static final String TASK = "copy-elsewhere";

  /** The kind of event that tells of a copy that has come there, with its name. */
  static final String KIND = "copied-elsewhere";

  /** Common practice: weekly, and a day's grace. */
  private static final Duration TOO_LONG = Duration.ofDays(8);

  /** What fails here has an alarm of its own, and its own patience. */
  private static final Cadence LOOKS =
      Cadence.every(Duration.ofMinutes(15))
          .startingAfter(Duration.ofMinutes(6))
          .retrying(Duration.ofMinutes(15), Duration.ofHours(1))
          .overdueAfter(Duration.ofDays(30));

  private final Elsewhere where;
  private final SecondPlace place;
  private final Copies copies;
  private final EventLog events;
  private final SampleLog samples;
  private final ZoneId zone;
  private final Time time;
  private final SupervisedTask looking;
  private String takenSinceStart = "";

  /** Returns it as the settings want it; null where they name no second place. */
  static @Nullable CopyElsewhere of(
      Settings settings,
      Database database,
      Copies copies,
      SampleLog samples,
      Time time,
      TaskSupervisor tasks) {
    Elsewhere where = settings.elsewhere();
    if (where == null) {
      return null;
    }
    String host = where.host();
    SecondPlace place =
        host == null
            ? new OtherFolder(Path.of(where.folder()), settings.store(), settings.zone())
            : new OtherMachine(host, where.folder(), settings.store(), settings.zone());
    return new CopyElsewhere(
        where, place, copies, new EventLog(database), samples, settings.zone(), time, tasks);
  }

  CopyElsewhere(
      Elsewhere where,
      SecondPlace place,
      Copies copies,
      EventLog events,
      SampleLog samples,
      ZoneId zone,
      Time time,
      TaskSupervisor tasks) {
    this.where = where;
    this.place = place;
    this.copies = copies;
    this.events = events;
    this.samples = samples;
    this.zone = zone;
    this.time = time;
    this.looking = tasks.task(TASK, LOOKS);
  }

  /** Looks every now and then whether there is a copy that has not been taken there. */
  void start(TaskThread thread) {
    looking.start(thread, this::look);
  }

  /**
   * Looks now.
   *
   * @throws IOException in one sentence when the place does not take the copy
   */
  void look() throws IOException, InterruptedException {
    NavigableMap<Instant, Path> all = copies.all();
    if (samples.isWaitingForDate() || all.isEmpty()) {
      return;
    }
    Map.Entry<Instant, Path> newest = all.firstEntry();
    Optional<StoredEvent> last = last();
    String name = newest.getValue().getFileName().toString();
    Instant now = time.now().at();
    Instant since = last.map(e -> Instant.ofEpochMilli(e.atMillis())).orElse(all.lastKey());
    if (name.equals(takenSinceStart) || last.map(StoredEvent::text).orElse("").equals(name)) {
      tell(now, since, last.isPresent(), null);
      return;
    }
    try {
      place.take(newest.getValue());
      takenSinceStart = name;
      samples.event(now.toEpochMilli(), null, KIND, name);
      samples.copiedElsewhere(null);
      LOG.info("The copy {} is in {}", name, where);
    } catch (IOException | InterruptedException | RuntimeException | Error e) {
      tell(now, since, last.isPresent(), e);
      throw e;
    }
  }

  private Optional<StoredEvent> last() {
    List<StoredEvent> page = events.page(KIND, 0, Long.MAX_VALUE, Long.MAX_VALUE, 1);
    return page.stream().findFirst();
  }

  private void tell(Instant now, Instant since, boolean isOnceThere, @Nullable Throwable why) {
    samples.copiedElsewhere(
        now.isBefore(since.plus(TOO_LONG))
            ? null
            : "no copy has come to %s %s%s"
                .formatted(
                    where,
                    isOnceThere ? "since " + LocalDate.ofInstant(since, zone) : "yet",
                    why == null ? "" : ": " + why.getMessage()));
  }
}
