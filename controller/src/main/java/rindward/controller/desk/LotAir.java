package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rindward.controller.crop.Range;
import rindward.controller.ledger.CurveLine;
import rindward.controller.ledger.Curves;
import rindward.controller.ledger.History;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;
import rindward.controller.variety.Grown;
import rindward.dashboard.rooms.ClimateView;
import rindward.dashboard.rooms.ClimateView.LineView;
import rindward.hardware.Thousandths;

/** The air around a lot: that of each place for as long as the lot was there. */
final class LotAir {
  private final String zone;
  private final long holdMillis;
  private final Function<String, History> historyOf;

  LotAir(String zone, long holdMillis, Function<String, History> historyOf) {
    this.zone = zone;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
  }

  ClimateView view(Lot lot, Optional<Grown> grown, Instant from, Instant to, int slots) {
    long fromMillis = from.toEpochMilli();
    long toMillis = to.toEpochMilli();
    long slotMillis = Math.max(1, (toMillis - fromMillis) / slots);
    List<Curves> inside = new ArrayList<>();
    for (Stay stay : lot.stays()) {
      long begin = Math.max(fromMillis, stay.from().toEpochMilli());
      long end = stay.to().isBefore(to) ? stay.to().toEpochMilli() : toMillis;
      if (begin < end) {
        inside.add(curves(stay.place(), begin, end, slotMillis));
      }
    }
    Optional<Range> range = grown.map(LotAir::range);
    return new ClimateView(
        lot.place(),
        from,
        to,
        slotMillis,
        zone,
        range.map(r -> RoomHistory.band(r.temperature())).orElse(null),
        range.map(r -> RoomHistory.band(r.humidity())).orElse(null),
        RoomHistory.line(joined(inside.stream().map(Curves::temperature).toList()), fromMillis),
        RoomHistory.line(joined(inside.stream().map(Curves::humidity).toList()), fromMillis),
        RoomHistory.line(joined(inside.stream().map(Curves::dewPoint).toList()), fromMillis),
        LineView.NONE,
        LineView.NONE);
  }

  /** The range it needs now: that of its cure until it has cured, then that of keeping. */
  private static Range range(Grown grown) {
    return grown
        .crop()
        .cure()
        .filter(cure -> grown.lived().cureEnd().isEmpty())
        .map(cure -> cure.target())
        .orElse(grown.crop().keeping().range());
  }

  private Curves curves(String place, long fromMillis, long toMillis, long slotMillis) {
    return Curves.of(historyOf.apply(place), fromMillis, toMillis, slotMillis, holdMillis);
  }

  /** One line after the other, broken off in between where the last of them ends with a value. */
  private static CurveLine joined(List<CurveLine> lines) {
    int size = lines.stream().mapToInt(line -> line.size() + 1).sum();
    long[] at = new long[size];
    int[] value = new int[size];
    int n = 0;
    for (CurveLine line : lines) {
      boolean isOpen = n > 0 && value[n - 1] != Thousandths.NONE;
      if (isOpen && line.size() > 0 && line.atMillis()[0] > at[n - 1] + 1) {
        at[n] = at[n - 1] + 1;
        value[n++] = Thousandths.NONE;
      }
      System.arraycopy(line.atMillis(), 0, at, n, line.size());
      System.arraycopy(line.value(), 0, value, n, line.size());
      n += line.size();
    }
    return new CurveLine(Arrays.copyOf(at, n), Arrays.copyOf(value, n));
  }
}
