package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.ledger.History;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.store.StoredEvent;
import rindward.dashboard.rooms.SwitchingView;
import rindward.dashboard.rooms.SwitchingView.ChangeView;
import rindward.dashboard.rooms.SwitchingView.StripView;

/** Gathers what was switched in a room, in order of time, into strips and the newest reasons. */
final class Switchings {
  private static final int MOST_CHANGES = 40;
  private static final String AFTER_NAME = ": ";

  private final Room room;
  private final long fromMillis;
  private final long toMillis;
  private final Map<String, List<Long>> changesOf = new LinkedHashMap<>();
  private final Deque<ChangeView> newest = new ArrayDeque<>();

  Switchings(Room room, long fromMillis, long toMillis) {
    this.room = room;
    this.fromMillis = fromMillis;
    this.toMillis = toMillis;
    room.outputs().values().forEach(o -> changesOf.put(o.name(), new ArrayList<>()));
  }

  /** Takes the next event; of an output that the room no longer has only the words are kept. */
  void accept(StoredEvent event) {
    int end = event.text().indexOf(AFTER_NAME);
    if (end < 0) {
      return;
    }
    String output = event.text().substring(0, end);
    boolean on = event.kind().equals("on");
    List<Long> changes = changesOf.get(output);
    if (changes != null) {
      changes.add(on ? event.atMillis() : -event.atMillis());
    }
    if (event.atMillis() >= fromMillis) {
      String reason = event.text().substring(end + AFTER_NAME.length());
      newest.addFirst(new ChangeView(Instant.ofEpochMilli(event.atMillis()), output, on, reason));
      if (newest.size() > MOST_CHANGES) {
        newest.removeLast();
      }
    }
  }

  SwitchingView view(int slots, History history, long holdMillis) {
    Gaps gaps = Gaps.of(history, earliest(), toMillis, holdMillis);
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
        List.copyOf(newest));
  }

  /** What was switched on before the stretch counts only if the room was watched ever since. */
  private long earliest() {
    return changesOf.values().stream()
        .filter(changes -> !changes.isEmpty())
        .mapToLong(changes -> Math.abs(changes.get(0)))
        .reduce(fromMillis, Math::min);
  }
}
