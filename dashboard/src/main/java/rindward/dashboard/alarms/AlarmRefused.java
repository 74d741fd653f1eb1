package rindward.dashboard.alarms;

/** Why an answer to an alarm is not taken, in a sentence for the person who gave it. */
public final class AlarmRefused extends Exception {
  private static final long serialVersionUID = 1;

  public AlarmRefused(String sentence) {
    super(sentence);
  }
}
