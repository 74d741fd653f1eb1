package rindward.controller.room;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKind;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Speaker;
import rindward.controller.journal.SwitchedByHand;
import rindward.hardware.OutputKind;

/**
 * What was switched by hand and is in force: at most one command an output. The journal is trusted
 * with nothing that has to do with a pin: whoever folds it asks anew who may say such a thing, how
 * late it is and when it ends. <b>Off always counts</b>, whoever said it and whenever, until its
 * end and over restarts; on counts only when it was heard at once, and never from before the start.
 * Immutable.
 */
public final class HandCommands {
  /** What was said longer ago starts nothing: a late outbox of a phone heats no shed. */
  public static final Duration FRESH = Duration.ofSeconds(10);

  /** Nothing is held by hand. */
  public static final HandCommands NONE = new HandCommands(new HashMap<>());

  private final Map<String, Map<OutputKind, ManualCommand>> byRoom;

  private HandCommands(Map<String, Map<OutputKind, ManualCommand>> byRoom) {
    this.byRoom = byRoom;
    byRoom.values().removeIf(Map::isEmpty);
  }

  /** Returns the commands of rooms as they were told to be in force. */
  public static HandCommands of(Map<String, List<ManualCommand>> inForce) {
    Map<String, Map<OutputKind, ManualCommand>> all = new HashMap<>();
    inForce.forEach(
        (room, commands) -> {
          Map<OutputKind, ManualCommand> own = new HashMap<>();
          commands.forEach(command -> own.put(command.kind(), command));
          all.put(room, own);
        });
    return new HandCommands(all);
  }

  /**
   * Returns what is in force at a start: what was switched off and is not over. Nothing is on by
   * hand then.
   *
   * @param mayBe tells whether somebody may say what needs such a speaker
   */
  public static HandCommands atStart(
      List<Recorded> journal, BiPredicate<String, Speaker> mayBe, Instant now) {
    HandCommands all = NONE;
    for (Recorded recorded : journal) {
      if (isForHands(recorded.entry())) {
        Instant then = recorded.recordedAt().isAfter(now) ? now : recorded.recordedAt();
        all = all.after(recorded, mayBe, then);
      }
    }
    Map<String, Map<OutputKind, ManualCommand>> offs = all.copy();
    offs.values().forEach(own -> own.values().removeIf(c -> c.on() || !c.until().isAfter(now)));
    return new HandCommands(offs);
  }

  /**
   * Returns what is in force after more was said.
   *
   * @param news what was said since, in its order
   * @param mayBe tells whether somebody may say what needs such a speaker
   * @param now when it is heard
   */
  public HandCommands after(List<Recorded> news, BiPredicate<String, Speaker> mayBe, Instant now) {
    HandCommands next = this;
    for (Recorded recorded : news) {
      next = next.after(recorded, mayBe, now);
    }
    return next;
  }

  private HandCommands after(Recorded recorded, BiPredicate<String, Speaker> mayBe, Instant now) {
    Entry entry = recorded.entry();
    if (entry instanceof SwitchedByHand said) {
      boolean counts = !said.on() || (isAllowed(recorded, mayBe) && isPunctual(recorded, now));
      return counts ? with(said, recorded.by(), now) : this;
    }
    return entry instanceof LetRun let && isAllowed(recorded, mayBe) && isPunctual(recorded, now)
        ? without(let.room(), let.part())
        : this;
  }

  /** Returns what holds the outputs of a room. */
  public List<ManualCommand> of(String room, Instant now) {
    List<ManualCommand> own = new ArrayList<>(byRoom.getOrDefault(room, Map.of()).values());
    own.removeIf(command -> !command.until().isAfter(now));
    return own;
  }

  /** Returns the same without anything that is on in a room. */
  public HandCommands withoutOn(String room) {
    Map<String, Map<OutputKind, ManualCommand>> next = copy();
    next.getOrDefault(room, new HashMap<>()).values().removeIf(ManualCommand::on);
    return new HandCommands(next);
  }

  /**
   * Returns why an output cannot be switched like that now, in one sentence; empty if it can.
   *
   * @param rooms every room of the settings
   */
  public static Optional<String> refusal(List<Room> rooms, SwitchedByHand said, Instant now) {
    Optional<Room> known = rooms.stream().filter(r -> r.name().equals(said.room())).findFirst();
    if (known.isEmpty()) {
      return Optional.of("There is no room " + said.room() + ".");
    }
    if (!known.get().has(said.part())) {
      return Optional.of("Room " + said.room() + " has no " + said.part().word() + ".");
    }
    if (known.get().observeOnly()) {
      return Optional.of(
          "Room " + said.room() + " is only observed until it has been commissioned.");
    }
    return said.until().isAfter(now)
        ? Optional.empty()
        : Optional.of("The end lies in the past; a command by hand must end later than now.");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HandCommands hands && byRoom.equals(hands.byRoom);
  }

  @Override
  public int hashCode() {
    return byRoom.hashCode();
  }

  private static boolean isForHands(Entry entry) {
    return entry instanceof SwitchedByHand || entry instanceof LetRun;
  }

  private static boolean isAllowed(Recorded recorded, BiPredicate<String, Speaker> mayBe) {
    EntryKind<?> kind = EntryKinds.of(recorded.entry());
    return EntryKinds.refusal(recorded.entry()).isEmpty()
        && mayBe.test(recorded.by(), kind.speaker());
  }

  /** Neither when it was said nor when it came may be long ago, or yet to come. */
  private static boolean isPunctual(Recorded recorded, Instant heardAt) {
    return isNear(recorded.entry().at(), heardAt) && isNear(recorded.recordedAt(), heardAt);
  }

  private static boolean isNear(Instant said, Instant heardAt) {
    return Duration.between(said, heardAt).abs().compareTo(FRESH) <= 0;
  }

  /** However far away the end was said to be, a hand lets go within a day. */
  private HandCommands with(SwitchedByHand said, String by, Instant heardAt) {
    Instant latest = heardAt.plus(SwitchedByHand.LONGEST);
    Instant until = said.until().isAfter(latest) ? latest : said.until();
    Map<String, Map<OutputKind, ManualCommand>> next = copy();
    next.computeIfAbsent(said.room(), room -> new HashMap<>())
        .put(said.part(), new ManualCommand(said.part(), said.on(), until, by));
    return new HandCommands(next);
  }

  private HandCommands without(String room, OutputKind part) {
    Map<String, Map<OutputKind, ManualCommand>> next = copy();
    next.getOrDefault(room, new HashMap<>()).remove(part);
    return new HandCommands(next);
  }

  private Map<String, Map<OutputKind, ManualCommand>> copy() {
    Map<String, Map<OutputKind, ManualCommand>> copy = new HashMap<>();
    byRoom.forEach((room, own) -> copy.put(room, new HashMap<>(own)));
    return copy;
  }
}
