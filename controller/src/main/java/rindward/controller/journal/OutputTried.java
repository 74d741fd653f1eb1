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
  @Override
  public String subject() {
    return room;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.outputTried(this);
  }
}
