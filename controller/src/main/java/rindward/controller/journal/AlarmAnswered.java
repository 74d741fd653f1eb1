package rindward.controller.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Somebody answered an alarm.
 *
 * @param alarm which, in the word by which pages and messages call it
 * @param until the end of a shelf; null for any other answer
 * @param code what is read on the board to release a heater that did not stop; null without
 */
public record AlarmAnswered(
    String alarm, AlarmAnswer answer, @Nullable Instant until, Instant at, @Nullable String code)
    implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<AlarmAnswered> KIND =
      EntryKind.of(
              "alarm-answered",
              AlarmAnswered.class,
              Field.text("alarm"),
              Field.word("answer", AlarmAnswer.class),
              Field.time("until").orNothing(),
              Field.at(),
              Field.text("code").orNothing())
          .where(AlarmAnswered::refusal);

  private static final int LONGEST_WORD = 300;

  private static final int LONGEST_CODE = 20;

  /** No shelf lasts longer, so that none is forgotten. */
  private static final Duration LONGEST = Duration.ofDays(1);

  /** An answer that releases nothing. */
  public AlarmAnswered(String alarm, AlarmAnswer answer, @Nullable Instant until, Instant at) {
    this(alarm, answer, until, at, null);
  }

  @Override
  public String subject() {
    return "alarm " + alarm;
  }

  private Optional<String> refusal() {
    if (alarm.isBlank() || alarm.length() > LONGEST_WORD) {
      return Optional.of("alarm was '" + alarm + "' but it must be the word of an alarm");
    }
    if (code != null && (code.isBlank() || code.length() > LONGEST_CODE)) {
      return Optional.of("code was '" + code + "' but it must be the six figures on the board");
    }
    if (answer != AlarmAnswer.SHELVED) {
      return Optional.empty();
    }
    return wrongEnd(until, at);
  }

  /** Returns why something cannot be quiet until then. */
  static Optional<String> wrongEnd(@Nullable Instant until, Instant at) {
    return until != null && until.isAfter(at) && !until.isAfter(at.plus(LONGEST))
        ? Optional.empty()
        : Optional.of(
            "until was '"
                + until
                + "' but it must be a time within the next "
                + LONGEST.toHours()
                + " hours");
  }
}
