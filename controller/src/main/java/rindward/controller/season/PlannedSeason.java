package rindward.controller.season;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.LotAccount;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.Stock;
import rindward.controller.settings.PlannedLot;
import rindward.controller.settings.Settings;
import rindward.hardware.Thousandths;
import rindward.hardware.shed.FruitLoad;
import rindward.hardware.shed.RoomTruth;
import rindward.hardware.shed.SimulatedShed;

/**
 * A season as it was planned: lots come in on their days, cure, and go on when they have. When all
 * lots of a room that go on have cured, the room slides over three days to what the next room is
 * like; then they are carried over. An empty room rests. For one thread.
 */
final class PlannedSeason implements SeasonLoop.Course {
  private static final int SLIDE_DAYS = 3;
  private static final LocalTime CARRIED_IN = LocalTime.of(16, 0);

  private final Settings settings;
  private final SimulatedShed shed;
  private final List<Planned> lots = new ArrayList<>();
  private final Map<String, Measured> measured = new LinkedHashMap<>();
  private final Map<String, RoomScore> scores = new LinkedHashMap<>();
  private final Map<String, RoomDemand> demands = new LinkedHashMap<>();
  private final Map<String, Instant> slidesSince = new LinkedHashMap<>();
  private Instant nextCount;

  /** A lot on its way through the season. */
  private static final class Planned {
    final PlannedLot plan;
    final Crop crop;
    final Instant arrives;
    @Nullable String room;
    Instant countedTo;
    LotAccount account = LotAccount.BEGIN;

    Planned(PlannedLot plan, Crop crop, Instant arrives) {
      this.plan = plan;
      this.crop = crop;
      this.arrives = arrives;
      this.countedTo = arrives;
    }

    boolean goesOn() {
      return plan.then() != null && plan.room().equals(room);
    }
  }

  /** What became of one lot. */
  record Fate(String code, LotAccount account) {}

  PlannedSeason(Settings settings, SimulatedShed shed, Instant start) {
    this.settings = settings;
    this.shed = shed;
    this.nextCount = start.plus(Duration.ofHours(1));
    for (Room room : settings.rooms()) {
      measured.put(
          room.name(),
          new Measured(start.toEpochMilli(), Math.toIntExact(settings.tick().toMillis())));
      scores.put(room.name(), new RoomScore());
    }
    for (PlannedLot plan : settings.season()) {
      Crop crop = settings.crops().crop(plan.crop()).orElseThrow();
      lots.add(new Planned(plan, crop, arrival(plan, start, settings.zone())));
    }
    settings.rooms().forEach(room -> demands.put(room.name(), demand(room)));
  }

  /** The first such day not before the season's start. */
  private static Instant arrival(PlannedLot plan, Instant start, ZoneId zone) {
    LocalDate first = start.atZone(zone).toLocalDate();
    LocalDate day = plan.arrives().atYear(first.getYear());
    LocalDate next = day.isBefore(first) ? plan.arrives().atYear(first.getYear() + 1) : day;
    return next.atTime(CARRIED_IN).atZone(zone).toInstant();
  }

  @Override
  public void dawns(Instant at) {
    boolean changed = false;
    for (Planned lot : lots) {
      if (lot.room == null && !at.isBefore(lot.arrives)) {
        lot.room = lot.plan.room();
        shed.load(
            lot.plan.room(),
            FruitLoad.winterSquash(
                lot.plan.code(), lot.plan.massGrams() / 1000.0, shed.outdoor().temperatureC()));
        changed = true;
      }
    }
    if (!at.isBefore(nextCount)) {
      nextCount = nextCount.plus(Duration.ofHours(1));
      countTo(at);
      changed |= goOn(at);
    }
    if (changed) {
      settings.rooms().forEach(room -> demands.put(room.name(), demand(room)));
    }
  }

  private void countTo(Instant at) {
    for (Planned lot : lots) {
      String here = lot.room;
      Measured history = here == null ? null : measured.get(here);
      if (here != null && history != null && lot.countedTo.isBefore(at)) {
        lot.account =
            lot.account.then(
                new Exposure(
                    history,
                    room(here).accuracy(),
                    lot.countedTo.toEpochMilli(),
                    at.toEpochMilli()),
                lot.crop,
                settings.hold().toMillis());
        lot.countedTo = at;
      }
    }
  }

  private boolean goOn(Instant at) {
    boolean changed = false;
    for (Room room : settings.rooms()) {
      List<Planned> going = going(room.name());
      Instant since = slidesSince.get(room.name());
      if (going.isEmpty()) {
        changed |= slidesSince.remove(room.name()) != null;
      } else if (since == null && going.stream().allMatch(l -> l.account.curedAt() != null)) {
        slidesSince.put(room.name(), at);
        changed = true;
      } else if (since != null && !at.isBefore(since.plus(Duration.ofDays(SLIDE_DAYS)))) {
        for (Planned lot : going) {
          String to = lot.plan.then();
          if (to != null) {
            shed.move(lot.plan.code(), room.name(), to);
            lot.room = to;
          }
        }
        slidesSince.remove(room.name());
        changed = true;
      }
    }
    return changed;
  }

  private List<Planned> going(String room) {
    return lots.stream().filter(l -> room.equals(l.room) && l.goesOn()).toList();
  }

  private RoomDemand demand(Room room) {
    List<Planned> here = lots.stream().filter(l -> room.name().equals(l.room)).toList();
    if (here.isEmpty()) {
      return new RoomDemand(null, 0, Stock.UNTOLD, List.of());
    }
    int chilling =
        here.stream()
            .flatMap(l -> l.crop.keeping().chilling().stream())
            .mapToInt(c -> c.threshold().value())
            .max()
            .orElse(Thousandths.NONE);
    Instant newest = here.stream().map(l -> l.arrives).max(Instant::compareTo).orElseThrow();
    Stock stock = new Stock(chilling, newest);
    String then = going(room.name()).stream().map(l -> l.plan.then()).findFirst().orElse(null);
    if (!slidesSince.containsKey(room.name()) || then == null) {
      return new RoomDemand(room.range(), 0, stock, List.of());
    }
    Range goal = room(then).range();
    int distance = Math.abs(goal.temperature().middle() - room.range().temperature().middle());
    return new RoomDemand(goal, Math.max(1, distance / SLIDE_DAYS), stock, List.of());
  }

  private Room room(String name) {
    return settings.rooms().stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  @Override
  public RoomDemand demand(Room room, Instant at) {
    RoomDemand demand = demands.get(room.name());
    return demand == null ? RoomDemand.of(room) : demand;
  }

  @Override
  public void sees(Room room, RoomDemand demand, RoomTruth truth, Picture picture, Duration tick) {
    RoomScore score = score(room.name());
    boolean minds = demand.stock().mindsCold();
    score.countHarm(truth, minds ? demand.stock().chillingMilliC() / 1000.0 : Double.NaN, tick);
    if (demand.range() != null && demand.slideMilliCPerDay() == 0) {
      score.count(truth, demand.range(), tick);
    }
    Measured history = measured.get(room.name());
    if (history != null) {
      history.add(picture.temperatureMilliC(), picture.humidityMilliPct());
    }
  }

  /** Returns how one room has done so far. */
  RoomScore score(String room) {
    RoomScore score = scores.get(room);
    if (score == null) {
      throw new IllegalArgumentException("there is no room " + room);
    }
    return score;
  }

  /** Returns what became of the lots that came in, up to a moment. */
  List<Fate> fates(Instant at) {
    countTo(at);
    return lots.stream()
        .filter(l -> l.room != null)
        .map(l -> new Fate(l.plan.code(), l.account))
        .toList();
  }
}
