package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.ledger.History;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.store.StoredSwitching;
import rindward.controller.store.SwitchingLog;
import rindward.dashboard.rooms.SwitchingView;
import rindward.dashboard.rooms.SwitchingView.ChangeView;
import rindward.dashboard.rooms.SwitchingView.StripView;

/** Gathers what was switched in a room, in order of time, into strips. */
final class Switchings implements SwitchingLog.Visitor {
  private final Room room;
  private final long fromMillis;
  private final long toMillis;
  private final Map<String, List<Long>> changesOf = new LinkedHashMap<>();

  Switchings(Room room, long fromMillis, long toMillis) {
    this.room = room;
    this.fromMillis = fromMillis;
    this.toMillis = toMillis;
    room.outputs().values().forEach(o -> changesOf.put(o.name(), new ArrayList<>()));
  }

  /** Takes the next switching; one of an output that the room no longer has gets no strip. */
  @Override
  public void switched(String output, long atMillis, boolean isOn) {
    List<Long> changes = changesOf.get(output);
    if (changes != null) {
      changes.add(isOn ? atMillis : -atMillis);
    }
  }

  /** Returns the strips, and beside them the newest changes with their reasons. */
  SwitchingView view(int slots, History history, long holdMillis, List<StoredSwitching> newest) {
    RecordGaps gaps = RecordGaps.of(history, earliest(), toMillis, holdMillis);
    List<StripView> strips = new ArrayList<>();
    for (Output output : room.outputs().values()) {
      OnShare share = new OnShare(fromMillis, toMillis, slots, gaps);
      for (long change : changesOf.getOrDefault(output.name(), List.of())) {
        share.switched(Math.abs(change), change > 0);
      }
      strips.add(new StripView(output.name(), output.kind().word(), share.shares()));
    }
    return new SwitchingView(
        Instant.ofEpochMilli(fromMillis),
        Instant.ofEpochMilli(toMillis),
        Math.max(1, (toMillis - fromMillis) / slots),
        strips,
        newest.stream().map(Switchings::change).toList());
  }

  private static ChangeView change(StoredSwitching switching) {
    return new ChangeView(
        Instant.ofEpochMilli(switching.atMillis()),
        switching.output(),
        switching.isOn(),
        switching.reason());
  }

  /** What was switched on before the stretch counts only if the room was watched ever since. */
  private long earliest() {
    return changesOf.values().stream()
        .filter(changes -> !changes.isEmpty())
        .mapToLong(changes -> Math.abs(changes.get(0)))
        .reduce(fromMillis, Math::min);
  }
}
