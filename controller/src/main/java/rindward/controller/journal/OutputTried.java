package rindward.controller.journal;

import java.time.Instant;

/**
 * Somebody stood beside an output while it ran, and the right thing ran.
 *
 * @param room the room it works in
 * @param output its name
 * @param place what it hung on then, as a person would look for it
 */
public record OutputTried(String room, String output, String place, Instant at) implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<OutputTried> KIND =
      EntryKind.of(
              "output-tried",
              OutputTried.class,
              Field.text("room"),
              Field.text("output"),
              Field.text("place"),
              Field.at())
          .saidBy(Speaker.OWNER);

  @Override
  public String subject() {
    return room;
  }
}
