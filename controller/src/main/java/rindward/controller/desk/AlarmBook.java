package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.Priority;
import rindward.controller.journal.AlarmAnswer;
import rindward.controller.journal.AlarmAnswered;
import rindward.controller.journal.Entry;
import rindward.controller.journal.WorkAnnounced;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.Room;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.EntryService;
import rindward.controller.store.StoreException;
import rindward.dashboard.alarms.AlarmHistoryView;
import rindward.dashboard.alarms.AlarmHistoryView.TurnView;
import rindward.dashboard.alarms.AlarmRefused;
import rindward.dashboard.alarms.AlarmRulesView;
import rindward.dashboard.alarms.AlarmsDesk;
import rindward.dashboard.alarms.AlarmsView;
import rindward.dashboard.alarms.AlarmsView.WorkView;

/** The alarms page: what the last tick made of the alarms, and what people answer, by the door. */
public final class AlarmBook implements AlarmsDesk {
  private final AlarmWords words;
  private final AlarmTable table;
  private final List<Room> rooms;
  private final EntryService door;
  private final AlarmLog history;
  private final ControlView control;
  private final Supplier<Instant> clock;

  /**
   * @param words puts alarms into words
   * @param control asked to look at the journal after something was said
   */
  public AlarmBook(
      AlarmWords words,
      AlarmTable table,
      List<Room> rooms,
      EntryService door,
      AlarmLog history,
      ControlView control,
      Supplier<Instant> clock) {
    this.words = words;
    this.table = table;
    this.rooms = List.copyOf(rooms);
    this.door = door;
    this.history = history;
    this.control = control;
    this.clock = clock;
  }

  @Override
  public AlarmsView alarms() {
    Judgement judgement = judgement();
    return new AlarmsView(
        now(),
        judgement.open(table).stream().map(id -> words.alarm(id, judgement)).toList(),
        judgement.silenced(table).stream().map(id -> words.alarm(id, judgement)).toList(),
        accepted().stream()
            .sorted(Comparator.comparing(AlarmId::key))
            .map(words::accepted)
            .toList(),
        rooms.stream().map(room -> work(room.name(), judgement)).toList());
  }

  @Override
  public AlarmHistoryView history(@Nullable String before, int size) {
    long millis = Long.MAX_VALUE;
    long id = Long.MAX_VALUE;
    if (before != null) {
      if (!before.matches("\\d{1,18}-\\d{1,18}")) {
        throw new IllegalArgumentException(
            "before was '" + before + "' but it must be 'next' of the page before.");
      }
      millis = Long.parseLong(before.substring(0, before.indexOf('-')));
      id = Long.parseLong(before.substring(before.indexOf('-') + 1));
    }
    List<AlarmLog.Noted> page = history.page(millis, id, size);
    List<TurnView> turns = new ArrayList<>();
    for (AlarmLog.Noted noted : page) {
      if (table.row(noted.turn().change().id().kind()).priority() != Priority.NEWS) {
        words.turn(noted).ifPresent(turns::add);
      }
    }
    if (page.size() < size) {
      return new AlarmHistoryView(turns, null);
    }
    AlarmLog.Noted last = page.get(page.size() - 1);
    return new AlarmHistoryView(turns, last.atMillis() + "-" + last.id());
  }

  @Override
  public AlarmRulesView rules() {
    return new AlarmRulesView(table.rows().values().stream().map(words::rule).toList());
  }

  @Override
  public void answer(Answer answer) throws AlarmRefused {
    AlarmAnswer word =
        AlarmAnswer.of(answer.answer())
            .orElseThrow(
                () ->
                    new AlarmRefused(
                        "answer was '" + answer.answer() + "' but it must be one of ours."));
    Optional<AlarmId> id = AlarmId.of(answer.alarm());
    if (id.isEmpty() || !isKnown(id.get())) {
      throw new AlarmRefused("There is no alarm '" + answer.alarm() + "'.");
    }
    boolean wakes = table.row(id.get().kind()).priority() == Priority.WAKE;
    if (word == AlarmAnswer.ACCEPTED && wakes) {
      throw new AlarmRefused("What harms the stock within hours cannot be accepted as it is.");
    }
    say(
        new AlarmAnswered(answer.alarm(), word, answer.until(), now(), answer.code()),
        answer.by(),
        answer.request());
  }

  @Override
  public void work(String room, Instant until, String by, String request) throws AlarmRefused {
    if (rooms.stream().noneMatch(r -> r.name().equals(room))) {
      throw new AlarmRefused("There is no room " + room + ".");
    }
    say(new WorkAnnounced(room, until, now()), by, request);
  }

  @Override
  public Instant now() {
    return clock.get();
  }

  /** One that lasts or was accepted; nobody can answer what has never been. */
  private boolean isKnown(AlarmId id) {
    return judgement().alarms().all().containsKey(id) || accepted().contains(id);
  }

  private void say(Entry entry, String by, String request) throws AlarmRefused {
    EntryService.Said answer;
    try {
      answer = door.say(entry, by, request, OptionalLong.empty(), now());
    } catch (StoreException e) {
      throw new AlarmRefused("It could not be kept: " + e.getMessage());
    }
    if (answer.refusal().isPresent()) {
      throw new AlarmRefused(answer.refusal().get());
    }
    control.lookAtJournal();
  }

  private Judgement judgement() {
    ControlReport report = control.latest();
    return report == null ? Judgement.NONE : report.snapshot().judgement();
  }

  /** What the grower has accepted as the best that can be had. */
  private Set<AlarmId> accepted() {
    ControlReport report = control.latest();
    return report == null ? Set.of() : report.accepted();
  }

  private static WorkView work(String room, Judgement judgement) {
    Map<String, Long> work = judgement.alarms().workUntilSeconds();
    Long until = work.get(room);
    return new WorkView(
        room, until == null || until <= judgement.seconds() ? null : judgement.wall(until));
  }
}
