package rindward.controller.lot;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Range;

/**
 * What somebody wants of a room from now on, instead of what its settings say.
 *
 * @param range the air it should have; null for none of its own
 * @param slideMilliCPerDay how fast the range may come down to it; 0 as the settings say
 * @param rests whether the room is to rest, with everything off; without a range and without rest
 *     it goes back to its settings
 */
public record RoomAsked(
    String room, @Nullable Range range, int slideMilliCPerDay, boolean rests, Instant at)
    implements Entry {
  @Override
  public String subject() {
    return room;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.roomAsked(this);
  }
}
