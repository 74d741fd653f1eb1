package rindward.controller.daemon;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.desk.HandSwitching;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RoomAsked;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Stay;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.Order;
import rindward.controller.room.Room;
import rindward.controller.room.Stock;
import rindward.hardware.OutputKind;
import rindward.hardware.Thousandths;

/**
 * What is asked of each room: its range from the settings or from what somebody has asked since,
 * what lies in it from the journal, and what was switched by hand. A room that has held a lot and
 * holds none any more rests, unless a range was asked for. For any thread; the control loop only
 * reads what is ready.
 */
public final class RoomOrders implements Orders, HandSwitching {
  private final List<Room> rooms;
  private final CropGuide crops;
  private final Map<String, List<ManualCommand>> commands = new HashMap<>();
  private NewerEntries newer = NewerEntries.NONE;
  private Map<String, Order> asked = Map.of();
  private volatile Map<String, Order> ready = Map.of();

  public RoomOrders(List<Room> rooms, CropGuide crops) {
    this.rooms = List.copyOf(rooms);
    this.crops = crops;
  }

  @Override
  public Order of(Room room, Instant at) {
    Order order = ready.get(room.name());
    return order == null ? Order.of(room) : order;
  }

  /**
   * Looks at the journal again.
   *
   * @param lots as it tells them
   */
  public synchronized void look(List<Recorded> journal, Lots lots, Instant now) {
    Map<String, RoomAsked> wanted = wanted(journal, now);
    Map<String, Order> next = new HashMap<>();
    for (Room room : rooms) {
      next.put(room.name(), order(room, wanted.get(room.name()), lots, now));
    }
    asked = next;
    newer = NewerEntries.in(journal);
    for (Room room : rooms) {
      if (newer.isAbout(room)) {
        commands.remove(room.name());
      }
    }
    ready = withCommands(now);
  }

  @Override
  public synchronized Optional<String> command(String room, ManualCommand command, Instant now) {
    Optional<Room> known = rooms.stream().filter(r -> r.name().equals(room)).findFirst();
    if (known.isEmpty()) {
      return Optional.of("There is no room " + room + ".");
    }
    if (!known.get().has(command.kind())) {
      return Optional.of("Room " + room + " has no " + command.kind().word() + ".");
    }
    if (known.get().observeOnly()) {
      return Optional.of("Room " + room + " is only observed until it has been commissioned.");
    }
    if (newer.isAbout(known.get())) {
      return Optional.of(
          "A newer version of this program said something of room "
              + room
              + " that this version cannot read: nothing there is switched by hand until the newer"
              + " version runs again.");
    }
    if (!command.until().isAfter(now)) {
      return Optional.of("The end lies in the past; a command by hand must end later than now.");
    }
    List<ManualCommand> own = commands.computeIfAbsent(room, r -> new ArrayList<>());
    own.removeIf(c -> c.kind() == command.kind());
    own.add(command);
    ready = withCommands(now);
    return Optional.empty();
  }

  @Override
  public synchronized void release(String room, OutputKind kind, Instant now) {
    commands.getOrDefault(room, new ArrayList<>()).removeIf(c -> c.kind() == kind);
    ready = withCommands(now);
  }

  private Map<String, Order> withCommands(Instant now) {
    Map<String, Order> all = new HashMap<>();
    for (Room room : rooms) {
      Order order = asked.getOrDefault(room.name(), Order.of(room));
      List<ManualCommand> own = commands.getOrDefault(room.name(), new ArrayList<>());
      own.removeIf(c -> !c.until().isAfter(now));
      all.put(
          room.name(),
          new Order(
              order.range(), order.slideMilliCPerDay(), order.stock(), own, newer.commands(room)));
    }
    return Map.copyOf(all);
  }

  /** Returns what was last asked of each room that is not as its settings say. */
  private static Map<String, RoomAsked> wanted(List<Recorded> journal, Instant now) {
    Map<String, RoomAsked> last = new HashMap<>();
    for (Recorded recorded : journal) {
      if (recorded.entry() instanceof RoomAsked asked && !asked.at().isAfter(now)) {
        last.put(asked.room(), asked);
      }
    }
    last.values().removeIf(asked -> asked.range() == null && !asked.rests());
    return last;
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
