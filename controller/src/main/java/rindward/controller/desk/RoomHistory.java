package rindward.controller.desk;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.CurveLine;
import rindward.controller.ledger.Curves;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;
import rindward.controller.room.Room;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.dashboard.rooms.ClimateDesk;
import rindward.dashboard.rooms.ClimateView;
import rindward.dashboard.rooms.ClimateView.BandView;
import rindward.dashboard.rooms.ClimateView.LineView;
import rindward.dashboard.rooms.MarksView;
import rindward.dashboard.rooms.SwitchingView;
import rindward.hardware.Thousandths;

/** The room page: a room's air over time, what happened there, and every sample as a file. */
public final class RoomHistory implements ClimateDesk {
  private static final int MOST_CHANGES = 40;

  private final List<Room> rooms;
  private final ZoneId zone;
  private final long holdMillis;
  private final Function<Room, Optional<Range>> rangeOf;
  private final Function<String, History> historyOf;
  private final SwitchingLog switchingLog;
  private final RoomMarks marks;
  private final InstantSource clock;

  /**
   * @param rangeOf the air a room is to have now; nothing while it rests
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   */
  public RoomHistory(
      List<Room> rooms,
      Function<Room, Optional<Range>> rangeOf,
      ZoneId zone,
      long holdMillis,
      Function<String, History> historyOf,
      SwitchingLog switchingLog,
      RoomMarks marks,
      InstantSource clock) {
    this.rooms = List.copyOf(rooms);
    this.rangeOf = rangeOf;
    this.zone = zone;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
    this.switchingLog = switchingLog;
    this.marks = marks;
    this.clock = clock;
  }

  @Override
  public boolean knows(String name) {
    return rooms.stream().anyMatch(room -> room.name().equals(name));
  }

  @Override
  public ClimateView climate(String name, Instant from, Instant to, int slots, boolean outdoors) {
    Optional<Range> range = rangeOf.apply(room(name));
    long fromMillis = from.toEpochMilli();
    long toMillis = to.toEpochMilli();
    long slotMillis = Math.max(1, (toMillis - fromMillis) / slots);
    Curves inside = curves(name, fromMillis, toMillis, slotMillis);
    Optional<Curves> outside =
        outdoors
            ? Optional.of(curves(SampleLog.OUTDOORS, fromMillis, toMillis, slotMillis))
            : Optional.empty();
    return new ClimateView(
        name,
        from,
        to,
        slotMillis,
        zone.getId(),
        range.map(r -> band(r.temperature())).orElse(null),
        range.map(r -> band(r.humidity())).orElse(null),
        line(inside.temperature(), fromMillis),
        line(inside.humidity(), fromMillis),
        line(inside.dewPoint(), fromMillis),
        outside.map(o -> line(o.temperature(), fromMillis)).orElse(LineView.NONE),
        outside.map(o -> line(o.humidity(), fromMillis)).orElse(LineView.NONE));
  }

  @Override
  public SwitchingView switching(String name, Instant from, Instant to, int slots) {
    Switchings switchings = new Switchings(room(name), from.toEpochMilli(), to.toEpochMilli());
    switchingLog.between(name, from.toEpochMilli(), to.toEpochMilli(), switchings);
    return switchings.view(
        slots,
        historyOf.apply(name),
        holdMillis,
        switchingLog.newest(name, from.toEpochMilli(), to.toEpochMilli(), MOST_CHANGES));
  }

  @Override
  public MarksView marks(String name, Instant from, Instant to) {
    return marks.view(name, from, to);
  }

  @Override
  public void samples(String name, Instant from, Instant to, Samples samples) {
    long fromMillis = from.toEpochMilli();
    long toMillis = to.toEpochMilli();
    historyOf
        .apply(name)
        .forEach(fromMillis, toMillis, run -> handOver(run, fromMillis, toMillis, samples));
  }

  @Override
  public Instant now() {
    return clock.instant();
  }

  private Curves curves(String place, long fromMillis, long toMillis, long slotMillis) {
    return Curves.of(historyOf.apply(place), fromMillis, toMillis, slotMillis, holdMillis);
  }

  private Room room(String name) {
    return rooms.stream()
        .filter(room -> room.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no room '" + name + "'"));
  }

  static BandView band(Limits limits) {
    return new BandView(Thousandths.toDouble(limits.low()), Thousandths.toDouble(limits.high()));
  }

  static LineView line(CurveLine line, long fromMillis) {
    List<Double> seconds = new ArrayList<>(line.size());
    List<@Nullable Double> values = new ArrayList<>(line.size());
    for (int i = 0; i < line.size(); i++) {
      int value = line.value()[i];
      seconds.add((line.atMillis()[i] - fromMillis) / 1000.0);
      values.add(value == Thousandths.NONE ? null : (Double) Thousandths.toDouble(value));
    }
    return new LineView(seconds, values);
  }

  private static void handOver(Run run, long fromMillis, long toMillis, Samples samples) {
    for (int i = 0; i < run.count(); i++) {
      long at = run.startMillis() + (long) run.stepMillis() * i;
      if (at >= fromMillis && at < toMillis) {
        samples.sample(
            at,
            Thousandths.toDouble(run.temperatureMilliC()[i]),
            Thousandths.toDouble(run.humidityMilliPct()[i]));
      }
    }
  }
}
