package rindward.dashboard;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rindward.dashboard.alarms.AlarmHistoryView;
import rindward.dashboard.alarms.AlarmHistoryView.TurnView;
import rindward.dashboard.alarms.AlarmRefused;
import rindward.dashboard.alarms.AlarmRulesView;
import rindward.dashboard.alarms.AlarmRulesView.RuleView;
import rindward.dashboard.alarms.AlarmsDesk;
import rindward.dashboard.alarms.AlarmsView;
import rindward.dashboard.alarms.AlarmsView.AcceptedView;
import rindward.dashboard.alarms.AlarmsView.OpenView;
import rindward.dashboard.alarms.AlarmsView.WorkView;

/** Two alarms of an invented keeping room, once they have begun: one wakes, one can wait. */
final class InventedAlarms implements AlarmsDesk {
  private static final String KEEPING = "Keeping room";

  private final Instant at;
  private final List<Answer> answers = new ArrayList<>();
  private boolean hasBegun;
  private boolean isLockedOut;
  private Instant workUntil;

  InventedAlarms(Instant at) {
    this.at = at;
  }

  /** Lets the alarms begin. */
  synchronized void begin() {
    hasBegun = true;
  }

  /** Lets a heater go on that was told to stop, until the code 384172 is given. */
  synchronized void lockOut() {
    isLockedOut = true;
  }

  /** Returns every answer that was taken. */
  synchronized List<Answer> answers() {
    return List.copyOf(answers);
  }

  @Override
  public synchronized AlarmsView alarms() {
    if (!hasBegun) {
      return new AlarmsView(at, List.of(), List.of(), List.of(), rooms());
    }
    List<OpenView> open = new ArrayList<>();
    List<OpenView> silent = new ArrayList<>();
    open.add(
        alarm(
            "chilling@Keeping room",
            "Fruit too cold",
            true,
            wasSaid("chilling@Keeping room", "acknowledged") ? "acknowledged" : "unacknowledged",
            null,
            "The fruit is at 9.6 C; it chills below 10 C.",
            "See that the door is shut and the heater runs."));
    if (isLockedOut) {
      open.add(runaway());
    }
    Instant until = shelf();
    OpenView dry =
        alarm(
            "too-dry@Keeping room",
            "Too dry",
            false,
            until == null ? "unacknowledged" : "shelved",
            until,
            "The air is at 44 % and should not be below 50 %.",
            "Fill the humidifier and see that it runs.");
    (until == null ? open : silent).add(dry);
    List<AcceptedView> accepted =
        List.of(new AcceptedView("too-warm@Curing room", "Too warm", "Curing room", null));
    return new AlarmsView(at, open, silent, accepted, rooms());
  }

  @Override
  public synchronized AlarmHistoryView history(String before, int size) {
    if (before != null && !before.equals("1")) {
      throw new IllegalArgumentException("before was '" + before + "' but it must be a mark.");
    }
    List<TurnView> turns = new ArrayList<>();
    turns.add(turn("called", null));
    answers.forEach(answer -> turns.add(turn(answer.answer(), answer.by())));
    return new AlarmHistoryView(turns, before == null ? "1" : null);
  }

  @Override
  public AlarmRulesView rules() {
    return new AlarmRulesView(
        List.of(
            new RuleView(
                "chilling",
                "Fruit too cold",
                "wake",
                60,
                1800,
                0.3,
                false,
                false,
                List.of("Air colder than wanted"),
                "The room loses more heat than it is given.",
                "The fruit looks sound and rots weeks later.",
                "See that the door is shut and the heater runs.")));
  }

  @Override
  public synchronized void answer(Answer answer) throws AlarmRefused {
    if (!answer.alarm().contains("@")) {
      throw new AlarmRefused("There is no alarm " + answer.alarm() + ".");
    }
    answers.add(answer);
    isLockedOut &= !"384172".equals(answer.code());
  }

  @Override
  public synchronized void work(String room, Instant until, String by, String request) {
    workUntil = until.isAfter(at) ? until : null;
  }

  @Override
  public Instant now() {
    return at;
  }

  private Instant shelf() {
    return answers.stream()
        .filter(answer -> answer.answer().equals("shelved"))
        .map(Answer::until)
        .findFirst()
        .orElse(null);
  }

  private boolean wasSaid(String alarm, String what) {
    return answers.stream().anyMatch(a -> a.alarm().equals(alarm) && a.answer().equals(what));
  }

  private List<WorkView> rooms() {
    return List.of(new WorkView("Curing room", workUntil), new WorkView(KEEPING, null));
  }

  private TurnView turn(String what, String by) {
    return new TurnView(at, "chilling@Keeping room", "Fruit too cold", KEEPING, null, what, by);
  }

  private OpenView runaway() {
    return new OpenView(
        "heater-runaway@Keeping room/keeping-heater",
        "The heater does not stop",
        KEEPING,
        "keeping-heater",
        true,
        "latched-acknowledged",
        true,
        false,
        false,
        true,
        at.minusSeconds(1500),
        null,
        null,
        "Go, switch off and lock the heater's breaker.",
        "Its contact has welded.",
        "No room has heat.");
  }

  private OpenView alarm(
      String key,
      String name,
      boolean isUrgent,
      String state,
      Instant until,
      String howBad,
      String action) {
    return new OpenView(
        key,
        name,
        KEEPING,
        null,
        isUrgent,
        state,
        false,
        state.equals("unacknowledged"),
        !isUrgent,
        false,
        at.minusSeconds(1500),
        until,
        howBad,
        action,
        "The room loses more heat than it is given, or gives off more water than it should.",
        "What lies here keeps less long.");
  }
}
