package rindward.controller.store.samples;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Run;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.RoomIds;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoredEvent;
import rindward.controller.store.StoredSwitching;
import rindward.controller.store.SwitchingLog;

/**
 * Where the control loop leaves what it measured and did. Noting costs the loop next to nothing and
 * never fails: it goes to bounded memory. A second thread flushes that to disk, in one transaction
 * for all rooms; what could not be written is kept and tried again at the next flush, and {@link
 * #health()} says so.
 *
 * <p>{@link #sample}, {@link #event} and {@link #switching}: any thread. {@link #flush}: one thread
 * at a time.
 */
public final class SampleLog implements HeldSamples {

  /** The place under which outdoor air is kept, a name that nobody gives a room. */
  public static final String OUTDOORS = "(outdoors)";

  /** How often to flush: pulling the plug loses at most what came since. */
  public static final Duration FLUSH_INTERVAL = Duration.ofSeconds(45);

  /** Until a first sample is kept: a board that starts over and over keeps some of every start. */
  private static final Duration FIRST_FLUSH_INTERVAL = Duration.ofSeconds(3);

  /** Three days of two rooms at 10 s, in about 2 MB. */
  private static final int SAMPLE_CAPACITY = 50_000;

  private static final int EVENT_CAPACITY = 5_000;

  private final Database database;
  private final PendingQueue<Sample> samples;
  private final PendingQueue<StoredEvent> events = new PendingQueue<>(EVENT_CAPACITY);
  private final PendingQueue<StoredSwitching> switchings = new PendingQueue<>(EVENT_CAPACITY);
  private final PendingQueue<Sample> undated;
  private final PendingQueue<StoredEvent> undatedEvents = new PendingQueue<>(EVENT_CAPACITY);
  private final PendingQueue<StoredSwitching> undatedSwitchings =
      new PendingQueue<>(EVENT_CAPACITY);
  private boolean isUndated;
  private boolean isHushed;
  private volatile boolean hasKept;
  private volatile StoreHealth health = new StoreHealth(0, 0, null, null, null, null, null);
  private volatile @Nullable String anew;
  private volatile @Nullable String damage;
  private volatile @Nullable String copyTrouble;
  private volatile @Nullable String elsewhereTrouble;
  private final AtomicLong rewrites = new AtomicLong();
  private long finishedBefore = Long.MIN_VALUE;

  public SampleLog(Database database) {
    this(database, SAMPLE_CAPACITY);
  }

  /** As above, holding at most {@code sampleCapacity} samples in memory. */
  SampleLog(Database database, int sampleCapacity) {
    this.database = database;
    this.samples = new PendingQueue<>(sampleCapacity);
    this.undated = new PendingQueue<>(sampleCapacity);
  }

  private record Sample(String room, long second, int temperatureMilliC, int humidityMilliPct) {}

  /**
   * Lets what happens from now on pass unnoted, or be noted again: a rehearsal warms its simulated
   * rooms up to where a kept history ends. Control loop thread.
   */
  public void hush(boolean hushed) {
    isHushed = hushed;
  }

  /**
   * Lets what is noted from now on wait in memory for its date, because the clock cannot be
   * believed. Any thread.
   */
  public synchronized void waitForDate() {
    isUndated = true;
  }

  /**
   * Gives what has waited its date. What would lie in a time of which something is kept already is
   * given up: nothing counts twice. Any thread.
   *
   * @param shiftMillis what the times given so far were wrong by
   * @param newestMillis when the newest of what is kept was taken
   */
  public synchronized void date(long shiftMillis, long newestMillis) {
    isUndated = false;
    PendingQueue.Batch<Sample> batch = undated.batch();
    for (Sample s : batch.items()) {
      long second = Math.floorDiv(s.second * 1000 + shiftMillis, 1000);
      if (second * 1000 > newestMillis) {
        samples.add(new Sample(s.room, second, s.temperatureMilliC, s.humidityMilliPct));
      }
    }
    undated.release(batch);
    PendingQueue.Batch<StoredEvent> happened = undatedEvents.batch();
    for (StoredEvent e : happened.items()) {
      events.add(new StoredEvent(0, e.atMillis() + shiftMillis, e.room(), e.kind(), e.text()));
    }
    undatedEvents.release(happened);
    PendingQueue.Batch<StoredSwitching> switched = undatedSwitchings.batch();
    for (StoredSwitching s : switched.items()) {
      switchings.add(
          new StoredSwitching(
              s.atMillis() + shiftMillis, s.room(), s.output(), s.isOn(), s.reason()));
    }
    undatedSwitchings.release(switched);
  }

  /**
   * Notes what a room's air was. Never fails. The time is kept in whole seconds, rounded down;
   * values in hundredths; a value that no air can have (beyond +-327.67) as not measured.
   */
  public synchronized void sample(
      String room, long atMillis, int temperatureMilliC, int humidityMilliPct) {
    if (isHushed) {
      return;
    }
    (isUndated ? undated : samples)
        .add(
            new Sample(
                room,
                Math.floorDiv(atMillis, 1000),
                ChunkCodec.asKept(temperatureMilliC),
                ChunkCodec.asKept(humidityMilliPct)));
  }

  /** Notes that an output was switched, and why. Never fails. */
  public synchronized void switching(StoredSwitching switching) {
    if (isHushed) {
      return;
    }
    (isUndated ? undatedSwitchings : switchings).add(switching);
  }

  /** Notes what happened. Never fails. The fields are those of {@link StoredEvent}. */
  public synchronized void event(long atMillis, @Nullable String room, String kind, String text) {
    if (isHushed) {
      return;
    }
    (isUndated ? undatedEvents : events).add(new StoredEvent(0, atMillis, room, kind, text));
  }

  /**
   * Writes everything noted so far; once a day also makes one chunk of each finished day, those
   * left over from before a crash too. What could not be written waits for the next flush.
   *
   * @param nowMillis tells which days are over, epoch milliseconds UTC
   * @throws StoreException when something could not be written; {@link #health()} says so too
   */
  public StoreHealth flush(long nowMillis) {
    String because = null;
    try {
      writeAll();
      finishDaysBefore(Samples.dayOf(Math.floorDiv(nowMillis, 1000)));
    } catch (StoreException e) {
      because = e.getMessage();
      throw e;
    } catch (RuntimeException | Error e) {
      because = "it failed in an unforeseen way, " + e;
      throw e;
    } finally {
      int waiting = undated.size();
      if (because == null && waiting > 0) {
        because = "the clock cannot be believed yet; what is measured waits for its date";
      }
      health =
          new StoreHealth(
              because == null ? 0 : samples.size() + waiting,
              samples.lost() + undated.lost(),
              because,
              null,
              null,
              null,
              null);
    }
    return health();
  }

  private void writeAll() {
    PendingQueue.Batch<Sample> sampleBatch = samples.batch();
    PendingQueue.Batch<StoredEvent> eventBatch = events.batch();
    PendingQueue.Batch<StoredSwitching> switchingBatch = switchings.batch();
    if (sampleBatch.items().isEmpty()
        && eventBatch.items().isEmpty()
        && switchingBatch.items().isEmpty()) {
      return;
    }
    boolean rewritten =
        database.write(
            connection -> {
              EventLog.append(connection, eventBatch.items());
              SwitchingLog.append(connection, switchingBatch.items());
              return write(connection, sampleBatch.items());
            });
    if (rewritten) {
      rewrites.incrementAndGet();
    }
    if (!sampleBatch.items().isEmpty()) {
      hasKept = true;
    }
    samples.release(sampleBatch);
    events.release(eventBatch);
    switchings.release(switchingBatch);
  }

  /** Returns the pause before the next flush. Any thread. */
  public Duration untilNextFlush() {
    return hasKept ? FLUSH_INTERVAL : FIRST_FLUSH_INTERVAL;
  }

  /** Returns the state after the last flush and the last copy. */
  public StoreHealth health() {
    return health.with(anew, damage, copyTrouble, elsewhereTrouble);
  }

  /** Notes what {@code StartCheck} had to say. */
  public void begunAnew(String sentence) {
    anew = sentence;
  }

  /** Notes what {@link StartCheck#damage} has found, in one sentence; null when all is whole. */
  public void found(@Nullable String damageFound) {
    damage = damageFound;
  }

  /** Notes why the last copy could not be made, in one sentence; null when it was. */
  public void copied(@Nullable String trouble) {
    copyTrouble = trouble;
  }

  /** Notes since when no copy has come to the second place; null when all is well there. */
  public void copiedElsewhere(@Nullable String trouble) {
    elsewhereTrouble = trouble;
  }

  /** Tells whether what is measured waits for a clock that can be believed. */
  public synchronized boolean isWaitingForDate() {
    return isUndated;
  }

  @Override
  public long rewrites() {
    return rewrites.get();
  }

  @Override
  public List<Run> held(String room) {
    Samples ofRoom = new Samples();
    for (Sample s : samples.batch().items()) {
      if (s.room.equals(room)) {
        ofRoom.add(s.second, s.temperatureMilliC, s.humidityMilliPct);
      }
    }
    return ofRoom.runs();
  }

  private boolean write(Connection connection, List<Sample> batch) throws SQLException {
    Map<String, Samples> byRoom = new LinkedHashMap<>();
    for (Sample s : batch) {
      byRoom
          .computeIfAbsent(s.room, room -> new Samples())
          .add(s.second, s.temperatureMilliC, s.humidityMilliPct);
    }
    Chunks chunks = new Chunks(connection, database.file());
    boolean rewritten = false;
    for (Map.Entry<String, Samples> room : byRoom.entrySet()) {
      long id = RoomIds.idOf(connection, room.getKey());
      Map<Long, List<Run>> byDay = new TreeMap<>();
      for (Run run : room.getValue().runs()) {
        byDay.computeIfAbsent(Samples.dayOf(run), day -> new ArrayList<>()).add(run);
      }
      for (List<Run> day : byDay.values()) {
        rewritten |= chunks.append(id, day);
      }
    }
    return rewritten;
  }

  /** Each day in its own transaction, so that nobody waits long. */
  private void finishDaysBefore(long today) {
    if (today == finishedBefore) {
      return;
    }
    List<Chunks.RoomDay> unfinished =
        database.read(c -> new Chunks(c, database.file()).unfinishedBefore(today));
    for (Chunks.RoomDay roomDay : unfinished) {
      database.write(
          c -> {
            new Chunks(c, database.file()).rewrite(roomDay, List.of());
            return roomDay;
          });
      rewrites.incrementAndGet();
    }
    finishedBefore = today;
  }
}
