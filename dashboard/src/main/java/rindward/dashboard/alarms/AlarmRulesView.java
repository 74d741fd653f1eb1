package rindward.dashboard.alarms;

import java.util.List;

/** The table of alarms: what is called about, when, and what to do. */
public record AlarmRulesView(List<RuleView> rules) {

  public AlarmRulesView {
    rules = List.copyOf(rules);
  }

  /**
   * One kind of alarm.
   *
   * @param kind its word
   * @param priority what it asks, as a word ("wake", "digest", "news")
   * @param onDelaySeconds how long it must last before it counts
   * @param offDelaySeconds how long it must be gone before it counts as gone
   * @param deadband how far a value must come back from its limit, in the value's unit; 0 for a yes
   *     or no
   * @param latching whether a person has to reset it
   * @param quietDuringWork whether it is silent while somebody works in the room
   * @param suppresses names of what follows from it and is not called about beside it
   */
  public record RuleView(
      String kind,
      String name,
      String priority,
      long onDelaySeconds,
      long offDelaySeconds,
      double deadband,
      boolean latching,
      boolean quietDuringWork,
      List<String> suppresses,
      String cause,
      String consequence,
      String action) {
    public RuleView {
      suppresses = List.copyOf(suppresses);
    }
  }
}
