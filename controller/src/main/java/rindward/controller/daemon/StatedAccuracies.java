package rindward.controller.daemon;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracy;
import rindward.controller.lot.Lots;
import rindward.controller.room.Room;
import rindward.controller.store.EntryService;
import rindward.controller.store.StoreException;

/**
 * Says in the journal how accurate the settings call the probes, whenever that has changed: from
 * then on only, so that new settings do not rewrite the past.
 */
final class StatedAccuracies {
  private StatedAccuracies() {}

  /**
   * @throws StoreException when the journal cannot be read or written
   */
  static void note(List<Room> rooms, EntryService door, Instant now) {
    for (Room room : rooms) {
      Accuracy stated = room.accuracy();
      if (!stated.equals(lastOf(door.about(List.of(room.name())), room.name()))) {
        door.say(
            new AccuracyStated(
                room.name(), stated.temperatureMilliC(), stated.humidityMilliPct(), now),
            "settings",
            "accuracy-" + room.name() + "-" + now.toEpochMilli(),
            OptionalLong.empty(),
            now);
      }
    }
  }

  private static @Nullable Accuracy lastOf(List<Recorded> journal, String room) {
    Accuracy last = null;
    for (Recorded recorded : Lots.standing(journal)) {
      if (recorded.entry() instanceof AccuracyStated stated && stated.room().equals(room)) {
        last = new Accuracy(stated.temperatureMilliC(), stated.humidityMilliPct());
      }
    }
    return last;
  }
}
