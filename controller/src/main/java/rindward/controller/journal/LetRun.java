package rindward.controller.journal;

import java.time.Instant;
import rindward.hardware.OutputKind;

/**
 * Somebody let an output of a room, that was switched by hand, run by itself again.
 *
 * @param part which output of the room
 */
public record LetRun(String room, OutputKind part, Instant at) implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<LetRun> KIND =
      EntryKind.of(
          "let-run",
          LetRun.class,
          Field.text("room"),
          Field.word("part", OutputKind.class),
          Field.at());

  @Override
  public String subject() {
    return SwitchedByHand.subjectOf(room);
  }
}
