package rindward.controller.room;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Speaker;

/**
 * What people want of rooms instead of what the settings say: of each room what was said last. The
 * journal is not trusted with what heats a room: bounds and speaker are looked at anew.
 */
public final class RoomRequests {
  private RoomRequests() {}

  /**
   * Returns what stands, by the name of the room.
   *
   * @param mayBe tells whether somebody may say what needs such a speaker
   */
  public static Map<String, RoomAsked> in(
      List<Recorded> journal, BiPredicate<String, Speaker> mayBe, Instant now) {
    Map<String, RoomAsked> last = new HashMap<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof RoomAsked asked
          && !asked.at().isAfter(now)
          && EntryKinds.refusal(asked).isEmpty()
          && mayBe.test(recorded.by(), RoomAsked.KIND.speaker())) {
        last.put(asked.room(), asked);
      }
    }
    last.values().removeIf(asked -> asked.range() == null && !asked.rests());
    return last;
  }
}
