package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;
import rindward.controller.store.AlarmLog;
import rindward.dashboard.rooms.MarksView;
import rindward.dashboard.rooms.MarksView.CalledView;
import rindward.dashboard.rooms.MarksView.MovedView;

/** What is marked on a room's axis of time: what was called about there, and lots on the move. */
public final class RoomMarks {
  /** An alarm that began longer before a stretch, and lasts, is not marked in it. */
  private static final Duration LOOK_BACK = Duration.ofDays(400);

  /** A year of a shed that calls more often than any should; of more, the newest. */
  private static final int MOST_TURNS = 3_000;

  private final AlarmTable table;
  private final AlarmLog log;
  private final CropGuide crops;
  private final LotPages lots;

  /**
   * @param lots has read the journal already
   */
  public RoomMarks(AlarmTable table, AlarmLog log, CropGuide crops, LotPages lots) {
    this.table = table;
    this.log = log;
    this.crops = crops;
    this.lots = lots;
  }

  MarksView view(String room, Instant from, Instant to) {
    return new MarksView(from, to, alarms(room, from, to), moves(room, from, to));
  }

  private List<CalledView> alarms(String room, Instant from, Instant to) {
    List<AlarmLog.Noted> newestFirst =
        log.between(from.minus(LOOK_BACK).toEpochMilli(), to.toEpochMilli(), MOST_TURNS);
    Map<AlarmId, Instant> begun = new HashMap<>();
    List<CalledView> alarms = new ArrayList<>();
    for (int i = newestFirst.size() - 1; i >= 0; i--) {
      AlarmLog.Noted noted = newestFirst.get(i);
      AlarmId id = noted.turn().change().id();
      Instant at = Instant.ofEpochMilli(noted.atMillis());
      if (noted.turn().change().isCall()) {
        begun.putIfAbsent(id, at);
      }
      if (noted.turn().change().isOver()) {
        Instant began = begun.remove(id);
        if (began != null && !at.isBefore(from)) {
          add(alarms, room, id, began, at);
        }
      }
    }
    begun.forEach((id, began) -> add(alarms, room, id, began, null));
    alarms.sort(Comparator.comparing(CalledView::began).thenComparing(CalledView::key));
    return alarms;
  }

  private void add(
      List<CalledView> alarms, String room, AlarmId id, Instant began, @Nullable Instant over) {
    AlarmRow row = table.row(id.kind());
    boolean isHere = id.room().isEmpty() || id.room().equals(room);
    if (isHere && row.priority() != Priority.NEWS) {
      alarms.add(
          new CalledView(
              id.key(),
              row.name(),
              id.room().isEmpty() ? null : id.room(),
              id.thing().isEmpty() ? null : id.thing(),
              row.priority() == Priority.WAKE,
              began,
              over));
    }
  }

  private List<MovedView> moves(String room, Instant from, Instant to) {
    List<MovedView> moves = new ArrayList<>();
    for (Lot lot : lots.told().lots().all()) {
      String before = null;
      for (Stay stay : lot.stays()) {
        boolean isHere = stay.place().equals(room);
        boolean wasHere = room.equals(before);
        if (isHere && !wasHere) {
          moves.add(moved(lot, stay.from(), true, before));
        } else if (wasHere && !isHere) {
          moves.add(moved(lot, stay.from(), false, stay.place()));
        }
        before = stay.place();
      }
      if (lot.place().equals(room)) {
        lot.emptied().ifPresent(at -> moves.add(moved(lot, at, false, null)));
      }
    }
    return moves.stream()
        .filter(move -> !move.at().isBefore(from) && move.at().isBefore(to))
        .sorted(Comparator.comparing(MovedView::at).thenComparing(MovedView::lot))
        .toList();
  }

  private MovedView moved(Lot lot, Instant at, boolean isIn, @Nullable String place) {
    String cropName = crops.crop(lot.crop()).map(Crop::name).orElse(lot.crop());
    return new MovedView(at, lot.code(), cropName, lot.variety(), isIn, place);
  }
}
