package rindward.controller.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import rindward.hardware.OutputKind;

/**
 * Somebody switched an output of a room by hand, on or off, until a time. It counts no longer once
 * the same output was switched again or {@link LetRun}; what control makes of it, and how late it
 * may be, stands in {@code room.HandCommands}.
 *
 * @param part which output of the room
 * @param on what it should do
 * @param until when the program takes over again
 */
public record SwitchedByHand(String room, OutputKind part, boolean on, Instant until, Instant at)
    implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<SwitchedByHand> KIND =
      EntryKind.of(
              "switched-by-hand",
              SwitchedByHand.class,
              Field.text("room"),
              Field.word("part", OutputKind.class),
              Field.yes("on"),
              Field.time("until"),
              Field.at())
          .where(SwitchedByHand::refusal);

  /** No hand holds an output for longer. */
  public static final Duration LONGEST = Duration.ofDays(1);

  /** A person needs a moment to confirm. */
  private static final Duration GRACE = Duration.ofMinutes(1);

  /** Returns the subject under which a room's switching by hand stands. */
  public static String subjectOf(String room) {
    return "hand " + room;
  }

  @Override
  public String subject() {
    return subjectOf(room);
  }

  private Optional<String> refusal() {
    return until.isAfter(at) && !until.isAfter(at.plus(LONGEST).plus(GRACE))
        ? Optional.empty()
        : Optional.of(
            "until was '"
                + until
                + "' but it must be a time within the next "
                + LONGEST.toHours()
                + " hours");
  }
}
