package rindward.controller.daemon;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.diagnosis.NewerEntries;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RoomAsked;
import rindward.controller.journal.Speaker;
import rindward.controller.lot.Lots;
import rindward.controller.room.HandCommands;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.room.RoomRequests;
import rindward.controller.store.LastingWords;

/**
 * What is asked of each room, as {@link RoomDemand} and {@link HandCommands} tell it from the
 * journal, ready for the control loop, which must not wait. For any thread.
 */
public final class RoomDemands implements DemandSource {
  private final List<Room> rooms;
  private final CropGuide crops;
  private final BiPredicate<String, Speaker> mayBe;
  private @Nullable HandCommands hands;
  private LastingWords words = LastingWords.unkept();
  private long heard;
  private NewerEntries newer = NewerEntries.NONE;
  private Map<String, RoomDemand> asked = Map.of();
  private volatile Map<String, RoomDemand> ready = Map.of();

  /**
   * @param mayBe tells whether somebody may say what needs such a speaker
   */
  public RoomDemands(List<Room> rooms, CropGuide crops, BiPredicate<String, Speaker> mayBe) {
    this.rooms = List.copyOf(rooms);
    this.crops = crops;
    this.mayBe = mayBe;
  }

  @Override
  public RoomDemand of(Room room, Instant at) {
    RoomDemand demand = ready.get(room.name());
    return demand == null ? RoomDemand.of(room) : demand;
  }

  /**
   * Begins with what was switched off by hand and asked for, before anything else of the journal is
   * read: nothing goes on at a start that somebody has switched off.
   *
   * @param ofHands what the journal tells of switching by hand; empty if it cannot be read
   * @param lasting what lasts whatever becomes of the journal
   */
  synchronized void begin(List<Recorded> ofHands, LastingWords lasting, Instant now) {
    words = lasting;
    List<Recorded> said = new ArrayList<>(lasting.words());
    said.addAll(ofHands);
    said.sort(Comparator.comparing(Recorded::recordedAt));
    HandCommands offs = HandCommands.atStart(said, mayBe, now);
    hands = offs;
    heard = ofHands.isEmpty() ? 0 : ofHands.get(ofHands.size() - 1).id();
    asked = asked(lasting.words(), Lots.of(List.of()), Set.of(), now);
    ready = withCommands(offs, now);
  }

  /**
   * Looks at the journal again.
   *
   * @param journal what is not over
   * @param lots as it tells them
   * @param finishedPlaces where lots lay that are over
   * @param last number of the last entry, over or not, that was there when it was read
   * @return whether anything is held by hand otherwise than before
   */
  public synchronized boolean look(
      List<Recorded> journal, Lots lots, Set<String> finishedPlaces, long last, Instant now) {
    asked = asked(words.hear(journal, mayBe, now), lots, finishedPlaces, now);
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
    heard = Math.max(last, journal.isEmpty() ? 0 : journal.get(journal.size() - 1).id());
    ready = withCommands(known, now);
    return before != null && !before.equals(known);
  }

  /** Who may ask was looked at when the words were taken in. */
  private Map<String, RoomDemand> asked(
      List<Recorded> lasting, Lots lots, Set<String> finishedPlaces, Instant now) {
    Map<String, RoomAsked> wanted = RoomRequests.in(lasting, (by, least) -> true, now);
    Map<String, RoomDemand> next = new HashMap<>();
    for (Room room : rooms) {
      RoomAsked request = wanted.get(room.name());
      next.put(room.name(), RoomDemand.of(room, request, lots, finishedPlaces, crops, now));
    }
    return next;
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

  private Map<String, RoomDemand> withCommands(HandCommands known, Instant now) {
    Map<String, RoomDemand> all = new HashMap<>();
    for (Room room : rooms) {
      RoomDemand demand = asked.getOrDefault(room.name(), RoomDemand.of(room));
      all.put(room.name(), demand.held(known.of(room.name(), now), newer.commands(room)));
    }
    return Map.copyOf(all);
  }
}
