package rindward.controller.daemon;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.diagnosis.NewerEntries;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Speaker;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Stay;
import rindward.controller.room.HandCommands;
import rindward.controller.room.Order;
import rindward.controller.room.Room;
import rindward.controller.room.Stock;
import rindward.hardware.Thousandths;

/**
 * What is asked of each room: its range from the settings or from what somebody has asked since,
 * what lies in it from the journal, and what was switched by hand. A room that has held a lot and
 * holds none any more rests, unless a range was asked for. For any thread; the control loop only
 * reads what is ready.
 */
public final class RoomOrders implements Orders {
  private final List<Room> rooms;
  private final CropGuide crops;
  private final BiPredicate<String, Speaker> mayBe;
  private @Nullable HandCommands hands;
  private long heard;
  private NewerEntries newer = NewerEntries.NONE;
  private Map<String, Order> asked = Map.of();
  private volatile Map<String, Order> ready = Map.of();

  /**
   * @param mayBe tells whether somebody may say what needs such a speaker
   */
  public RoomOrders(List<Room> rooms, CropGuide crops, BiPredicate<String, Speaker> mayBe) {
    this.rooms = List.copyOf(rooms);
    this.crops = crops;
    this.mayBe = mayBe;
  }

  @Override
  public Order of(Room room, Instant at) {
    Order order = ready.get(room.name());
    return order == null ? Order.of(room) : order;
  }

  /**
   * Begins with what was switched off by hand, before anything else of the journal is read: nothing
   * goes on at a start that somebody has switched off.
   *
   * @param ofHands what the journal tells of switching by hand
   */
  synchronized void begin(List<Recorded> ofHands, Instant now) {
    HandCommands offs = HandCommands.atStart(ofHands, mayBe, now);
    hands = offs;
    heard = ofHands.isEmpty() ? 0 : ofHands.get(ofHands.size() - 1).id();
    ready = withCommands(offs, now);
  }

  /**
   * Looks at the journal again.
   *
   * @param lots as it tells them
   * @return whether anything is held by hand otherwise than before
   */
  public synchronized boolean look(List<Recorded> journal, Lots lots, Instant now) {
    Map<String, RoomAsked> wanted = wanted(journal, now);
    Map<String, Order> next = new HashMap<>();
    for (Room room : rooms) {
      next.put(room.name(), order(room, wanted.get(room.name()), lots, now));
    }
    asked = next;
    newer = NewerEntries.in(journal);
    HandCommands before = hands;
    HandCommands known =
        before == null
            ? HandCommands.atStart(journal, mayBe, now)
            : before.after(since(journal), mayBe, now);
    for (Room room : rooms) {
      if (newer.isAbout(room)) {
        known = known.withoutOn(room.name());
      }
    }
    hands = known;
    heard = journal.isEmpty() ? 0 : journal.get(journal.size() - 1).id();
    ready = withCommands(known, now);
    return before != null && !before.equals(known);
  }

  /** Returns the number of the last entry that was heard; 0 for none. */
  synchronized long heard() {
    return heard;
  }

  private List<Recorded> since(List<Recorded> journal) {
    int first = journal.size();
    while (first > 0 && journal.get(first - 1).id() > heard) {
      first--;
    }
    return journal.subList(first, journal.size());
  }

  private Map<String, Order> withCommands(HandCommands known, Instant now) {
    Map<String, Order> all = new HashMap<>();
    for (Room room : rooms) {
      Order order = asked.getOrDefault(room.name(), Order.of(room));
      all.put(
          room.name(),
          new Order(
              order.range(),
              order.slideMilliCPerDay(),
              order.stock(),
              known.of(room.name(), now),
              newer.commands(room)));
    }
    return Map.copyOf(all);
  }

  /** Returns what was last asked of each room that is not as its settings say. */
  private Map<String, RoomAsked> wanted(List<Recorded> journal, Instant now) {
    Map<String, RoomAsked> last = new HashMap<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof RoomAsked asked
          && !asked.at().isAfter(now)
          && counts(recorded)) {
        last.put(asked.room(), asked);
      }
    }
    last.values().removeIf(asked -> asked.range() == null && !asked.rests());
    return last;
  }

  /** The journal is not trusted with what heats a room: bounds and speaker are looked at anew. */
  private boolean counts(Recorded recorded) {
    return EntryKinds.refusal(recorded.entry()).isEmpty()
        && mayBe.test(recorded.by(), EntryKinds.of(recorded.entry()).speaker());
  }

  private Order order(Room room, @Nullable RoomAsked asked, Lots lots, Instant now) {
    int chilling = Thousandths.NONE;
    Instant newest = null;
    boolean wasUsed = false;
    for (Lot lot : lots.all()) {
      for (Stay stay : lot.stays()) {
        if (!stay.place().equals(room.name()) || stay.from().isAfter(now)) {
          continue;
        }
        wasUsed = true;
        if (stay.to().isAfter(now)) {
          newest = newest == null || stay.from().isAfter(newest) ? stay.from() : newest;
          chilling = Math.max(chilling, chilling(lot));
        }
      }
    }
    boolean isDone = wasUsed && newest == null;
    Stock stock = new Stock(chilling, newest);
    int usualSlide = room.slideMilliCPerDay();
    if (asked == null) {
      return new Order(isDone ? null : room.range(), usualSlide, stock, List.of());
    }
    int slide = asked.slideMilliCPerDay() == 0 ? usualSlide : asked.slideMilliCPerDay();
    return new Order(asked.rests() ? null : asked.range(), slide, stock, List.of());
  }

  private int chilling(Lot lot) {
    return crops
        .crop(lot.crop())
        .map(Crop::keeping)
        .flatMap(keeping -> keeping.chilling())
        .map(cold -> cold.threshold().value())
        .orElse(Thousandths.NONE);
  }
}
