package rindward.controller.notice;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Alarms;
import rindward.controller.alarm.Priority;

/**
 * Who has been told what. Immutable: each tick gives the next rota and the errands of that tick.
 * Kept over a restart, so that nobody is told twice.
 *
 * @param calls what wakes and is not over, with who was called
 * @param forDigest what could wait and has not been in every digest yet, and since when
 * @param digested when each person last had a digest
 * @param errands what the last tick gives to do
 */
public record EscalationState(
    Map<AlarmId, Call> calls,
    Map<AlarmId, Instant> forDigest,
    Map<String, Instant> digested,
    List<NotificationTask> errands) {

  /** No call is followed up for longer than that, so older ones need not be remembered. */
  public static final Duration LONGEST_CALL = Duration.ofDays(30);

  /** Nobody has been told anything. */
  public static final EscalationState EMPTY =
      new EscalationState(Map.of(), Map.of(), Map.of(), List.of());

  public EscalationState {
    calls = Map.copyOf(calls);
    forDigest = Map.copyOf(forDigest);
    digested = Map.copyOf(digested);
    errands = List.copyOf(errands);
  }

  /**
   * One call that is not over.
   *
   * @param began when the first person was called
   * @param last when anybody was last told
   * @param told how many persons were, from the top of the line
   */
  public record Call(Instant began, Instant last, int told) {
    /** Returns the call after the next person was told. */
    Call next(Instant now) {
      return new Call(began, now, told + 1);
    }

    /** Returns the call after everybody was reminded. */
    Call again(Instant now) {
      return new Call(began, now, told);
    }
  }

  /**
   * Returns the rota as it was when the program ended.
   *
   * @param told who was told what in the last days, oldest first
   * @param waiting what could wait and began within {@link EscalationLine#LONGEST_DIGEST_WAIT}
   */
  public static EscalationState restored(List<SentNotice> told, Map<AlarmId, Instant> waiting) {
    Map<AlarmId, Call> open = new HashMap<>();
    Map<String, Instant> times = new HashMap<>();
    for (SentNotice one : told) {
      NotificationTask errand = one.errand();
      switch (errand.occasion()) {
        case CALL -> errand.alarms().forEach(id -> open.put(id, new Call(one.at(), one.at(), 1)));
        case NEXT_IN_LINE ->
            errand.alarms().forEach(id -> open.computeIfPresent(id, (i, c) -> c.next(one.at())));
        case REMINDER ->
            errand.alarms().forEach(id -> open.computeIfPresent(id, (i, c) -> c.again(one.at())));
        case ALL_CLEAR -> errand.alarms().forEach(open::remove);
        case DIGEST -> times.put(errand.person(), one.at());
      }
    }
    return new EscalationState(open, waiting, times, List.of());
  }

  /** Returns what follows from a tick's alarms. */
  public EscalationState after(
      Alarms alarms, AlarmTable table, EscalationLine line, ZoneId zone, Instant now) {
    if (line.persons().isEmpty()) {
      return EMPTY; // There is nobody to tell.
    }
    List<NotificationTask> given = new ArrayList<>();
    Map<AlarmId, Call> open = new HashMap<>(calls);
    Map<AlarmId, Instant> waiting = new HashMap<>(forDigest);
    List<String> awake = line.wanting(Priority.WAKE);
    for (AlarmChange change : alarms.changes()) {
      AlarmId id = change.id();
      boolean wakes = table.row(id.kind()).priority() == Priority.WAKE;
      if (change.isCall() && wakes && !awake.isEmpty()) {
        open.put(id, new Call(now, now, 1));
        given.add(new NotificationTask(NotificationReason.CALL, awake.get(0), List.of(id)));
      } else if (change.isCall() && !wakes) {
        waiting.put(id, now);
      }
      Call over = change.isOver() ? open.remove(id) : null;
      if (over != null) {
        for (String person : awake.subList(0, Math.min(over.told(), awake.size()))) {
          given.add(new NotificationTask(NotificationReason.ALL_CLEAR, person, List.of(id)));
        }
      }
    }
    open.replaceAll((id, call) -> followUp(id, call, alarms, awake, line, now, given));
    Map<String, Instant> times = digest(table, line, now.atZone(zone), waiting, given);
    waiting
        .values()
        .removeIf(since -> since.isBefore(now.minus(EscalationLine.LONGEST_DIGEST_WAIT)));
    return new EscalationState(open, waiting, times, given);
  }

  /** Returns since when an alarm has been spoken of; now for one that is over. */
  Instant since(AlarmId id, Instant now) {
    Call call = calls.get(id);
    return call == null ? forDigest.getOrDefault(id, now) : call.began();
  }

  /**
   * Nobody has answered in time: the next in line is called, and after the last all are reminded.
   */
  private static Call followUp(
      AlarmId id,
      Call call,
      Alarms alarms,
      List<String> awake,
      EscalationLine line,
      Instant now,
      List<NotificationTask> given) {
    if (alarms.alarm(id).state() != AlarmState.UNACKNOWLEDGED || awake.isEmpty()) {
      return call;
    }
    if (call.told() < awake.size()) {
      if (now.isBefore(call.last().plus(line.answerWithin()))) {
        return call;
      }
      given.add(
          new NotificationTask(
              NotificationReason.NEXT_IN_LINE, awake.get(call.told()), List.of(id)));
      return call.next(now);
    }
    if (now.isBefore(call.last().plus(line.remindEvery()))) {
      return call;
    }
    awake.forEach(
        person ->
            given.add(new NotificationTask(NotificationReason.REMINDER, person, List.of(id))));
    return call.again(now);
  }

  /** Gives each person whose hour has come what came up since their last digest; never nothing. */
  private Map<String, Instant> digest(
      AlarmTable table,
      EscalationLine line,
      ZonedDateTime local,
      Map<AlarmId, Instant> waiting,
      List<NotificationTask> given) {
    Map<String, Instant> times = new HashMap<>(digested);
    for (Person person : line.persons()) {
      Instant last = times.getOrDefault(person.name(), Instant.EPOCH);
      boolean hadToday = last.atZone(local.getZone()).toLocalDate().equals(local.toLocalDate());
      if (hadToday || local.toLocalTime().isBefore(person.digestAt())) {
        continue;
      }
      times.put(person.name(), local.toInstant());
      List<AlarmId> fresh =
          waiting.entrySet().stream()
              .filter(e -> person.wants().contains(table.row(e.getKey().kind()).priority()))
              .filter(e -> e.getValue().isAfter(last))
              .sorted(Map.Entry.comparingByValue())
              .map(Map.Entry::getKey)
              .toList();
      if (!fresh.isEmpty()) {
        given.add(new NotificationTask(NotificationReason.DIGEST, person.name(), fresh));
      }
    }
    return times;
  }
}
