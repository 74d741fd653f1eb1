package rindward.controller.daemon;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmTurn;
import rindward.controller.alarm.AlarmWatch;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.ShedFacts;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Tick;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.diagnosis.ShedFactCollector;
import rindward.controller.diagnosis.UncommandedHeat;
import rindward.controller.journal.Recorded;
import rindward.controller.notice.NotificationDispatcher;
import rindward.controller.notice.NotificationTask;
import rindward.controller.room.ProbeReading;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.CallLog;
import rindward.controller.store.samples.SampleLog;

/**
 * After each tick: what the shed shows becomes facts, facts become alarms, every turn of an alarm
 * is noted, and whoever has to be told is told. On the control thread, without waiting; only {@link
 * #hear} and {@link #note} are for others.
 */
final class AlarmEvaluator implements TickEvaluator {
  private final ShedFactCollector patrol;
  private final AlarmWatch alarms;
  private final NotificationDispatcher callout;
  private final Function<String, ProbeReading> latestOf;
  private final Supplier<Set<Finding>> upkeep;
  private final SampleLog log;
  private final boolean hasHeartbeat;
  private boolean areHeatersCut;
  private volatile LotNotes lots = LotNotes.NONE;

  /**
   * @param latestOf the latest of a probe
   * @param upkeep what others have found of the shed as a whole; must not wait
   * @param hasHeartbeat whether a relay before all heaters opens when it must
   */
  AlarmEvaluator(
      ShedFactCollector patrol,
      AlarmWatch alarms,
      NotificationDispatcher callout,
      Function<String, ProbeReading> latestOf,
      Supplier<Set<Finding>> upkeep,
      SampleLog log,
      boolean hasHeartbeat) {
    this.patrol = patrol;
    this.alarms = alarms;
    this.callout = callout;
    this.latestOf = latestOf;
    this.upkeep = upkeep;
    this.log = log;
    this.hasHeartbeat = hasHeartbeat;
  }

  /** Takes in what people have said since; answers take effect at the next tick. */
  void hear(List<Recorded> journal) {
    alarms.hear(journal);
  }

  /** Returns what the grower has accepted as the best that can be had. */
  Set<AlarmId> accepted() {
    return alarms.accepted();
  }

  /** Takes in what is known of the lots. */
  void note(LotNotes next) {
    lots = next;
  }

  @Override
  public Judgement judge(ShedSnapshot snapshot, Tick now) {
    ShedFacts facts =
        patrol.look(snapshot, areHeatersCut, lots, upkeep.get(), alarms.accepted(), latestOf, now);
    List<AlarmTurn> turns = new ArrayList<>(0);
    Judgement judgement = alarms.judge(facts, now, turns);
    areHeatersCut = hasHeartbeat && UncommandedHeat.isIn(snapshot.judged(judgement));
    turns.forEach(turn -> note(turn, now));
    for (NotificationTask errand : callout.after(judgement, now.at())) {
      log.event(now.at().toEpochMilli(), null, CallLog.KIND, CallLog.text(errand));
    }
    return judgement;
  }

  private void note(AlarmTurn turn, Tick now) {
    Instant at = now.at();
    Alarm kept = turn.alarm().onClock(at.getEpochSecond() - now.nanos() / 1_000_000_000L);
    String room = turn.change().id().room();
    log.event(
        at.toEpochMilli(),
        room.isEmpty() ? null : room,
        AlarmLog.KIND,
        AlarmLog.text(new AlarmTurn(turn.change(), kept, turn.by())));
  }
}
