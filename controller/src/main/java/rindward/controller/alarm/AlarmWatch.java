package rindward.controller.alarm;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import rindward.controller.control.Tick;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.WorkAnnounced;

/**
 * The alarms from tick to tick. People's answers come in by {@link #hear} from any thread and take
 * effect at the next tick; all else is for the control thread.
 */
public final class AlarmWatch {
  private final AlarmTable table;
  private final Queue<Recorded> unheeded = new ConcurrentLinkedQueue<>();
  private final AtomicLong heardUpTo = new AtomicLong();
  private final Set<AlarmId> accepted = ConcurrentHashMap.newKeySet();
  private final Map<AlarmId, Instant> noted;
  private final Alarms kept;
  private final LockOuts lockOuts;
  private Alarms alarms = Alarms.NONE;
  private boolean isAwake;

  /**
   * @param kept how the alarms were last noted, on a clock that counts epoch seconds
   * @param noted when each of them was last noted; what was answered since then is heard again
   * @param lockOuts what only somebody on the spot may release
   */
  public AlarmWatch(AlarmTable table, Alarms kept, Map<AlarmId, Instant> noted, LockOuts lockOuts) {
    this.table = table;
    this.kept = lockOuts.remembered(kept);
    this.lockOuts = lockOuts;
    this.noted = new HashMap<>(noted);
  }

  /** Takes in what was said since it was last told. */
  public synchronized void hear(List<Recorded> journal) {
    for (int i = journal.size() - 1; i >= 0 && journal.get(i).id() > heardUpTo.get(); i--) {
      // Looks for the first new one from the end: the journal of ten years is long.
      if (i == 0 || journal.get(i - 1).id() <= heardUpTo.get()) {
        journal.subList(i, journal.size()).stream()
            .filter(AlarmWatch::isForUs)
            .forEach(unheeded::add);
        heardUpTo.set(journal.get(journal.size() - 1).id());
        return;
      }
    }
  }

  /** Returns what the grower has accepted as the best that can be had; for any thread. */
  public Set<AlarmId> accepted() {
    return Set.copyOf(accepted);
  }

  /**
   * Takes in one tick's facts.
   *
   * @param turns takes every change, in its order
   */
  public Judgement judge(ShedFacts facts, Tick now, List<AlarmTurn> turns) {
    long seconds = now.nanos() / 1_000_000_000L;
    if (!isAwake) {
      isAwake = true;
      alarms = kept.onClock(seconds - now.at().getEpochSecond());
    }
    for (Recorded said = unheeded.poll(); said != null; said = unheeded.poll()) {
      heed(said, now.at(), seconds, turns);
    }
    alarms = alarms.after(facts, table, seconds);
    lockOuts.lock(alarms, now.at());
    alarms.changes().forEach(change -> turns.add(AlarmTurn.of(change, alarms, "")));
    Alarms judged =
        turns.isEmpty()
            ? alarms
            : new Alarms(
                alarms.all(),
                alarms.workUntilSeconds(),
                turns.stream().map(AlarmTurn::change).toList());
    return new Judgement(judged, facts, now.at(), seconds);
  }

  private void heed(Recorded said, Instant now, long seconds, List<AlarmTurn> turns) {
    if (said.entry() instanceof WorkAnnounced work) {
      alarms = alarms.workingIn(work.room(), onClock(work.until(), now, seconds), seconds);
    } else if (said.entry() instanceof AlarmAnswered answered) {
      Optional<AlarmId> id = AlarmId.of(answered.alarm());
      if (id.isPresent()) {
        answer(id.get(), answered, now, seconds);
        alarms.changes().forEach(change -> turns.add(AlarmTurn.of(change, alarms, said.by())));
      }
    }
  }

  private void answer(AlarmId id, AlarmAnswered answered, Instant now, long seconds) {
    alarms = new Alarms(alarms.all(), alarms.workUntilSeconds(), List.of());
    switch (answered.answer()) {
      case ACCEPTED -> {
        // Whoever says so: what harms the stock within hours cannot be accepted as it is.
        if (table.row(id.kind()).priority() != Priority.WAKE) {
          accepted.add(id);
        }
      }
      case NOT_ACCEPTED -> accepted.remove(id);
      default -> {
        if (answered.at().isBefore(noted.getOrDefault(id, Instant.EPOCH))) {
          return;
        }
        alarms = answered(id, answered, now, seconds);
      }
    }
  }

  private Alarms answered(AlarmId id, AlarmAnswered answered, Instant now, long seconds) {
    return switch (answered.answer()) {
      case ACKNOWLEDGED -> alarms.acknowledge(id);
      case RESET -> release(id, answered, alarms.reset(id));
      case SHELVED -> {
        Instant until = answered.until();
        yield until == null || !until.isAfter(now)
            ? alarms
            : alarms.shelve(id, onClock(until, now, seconds), seconds);
      }
      case UNSHELVED -> alarms.unshelve(id);
      case OUT_OF_SERVICE -> release(id, answered, alarms.outOfService(id, true));
      case BACK_IN_SERVICE -> alarms.outOfService(id, false);
      case ACCEPTED, NOT_ACCEPTED -> alarms;
    };
  }

  /** What releases heat needs the code, and lifts nothing while the heater still goes on. */
  private Alarms release(AlarmId id, AlarmAnswered answered, Alarms released) {
    if (LockOuts.isAbout(id)) {
      if (!lockOuts.opens(id, answered.code())) {
        return alarms;
      }
      Alarm after = released.alarm(id);
      if (after.isOutOfService() || !after.lasts()) {
        lockOuts.lift(id);
      }
    }
    return released;
  }

  private static long onClock(Instant until, Instant now, long seconds) {
    return seconds + until.getEpochSecond() - now.getEpochSecond();
  }

  private static boolean isForUs(Recorded said) {
    return said.entry() instanceof AlarmAnswered || said.entry() instanceof WorkAnnounced;
  }
}
