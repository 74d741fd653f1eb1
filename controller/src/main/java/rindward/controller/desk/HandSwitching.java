package rindward.controller.desk;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.diagnosis.NewerEntries;
import rindward.controller.journal.Entry;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.HandCommands;
import rindward.controller.room.Output;
import rindward.controller.room.Room;
import rindward.controller.store.EntryService;
import rindward.controller.store.StoreException;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.SwitchingRefused;
import rindward.hardware.OutputKind;

/**
 * Switching by hand as it is said on a page or over the broker: an entry like any other, refused at
 * once where it could not be carried out. What becomes of it is control's to decide, which looks at
 * it anew.
 */
final class HandSwitching {
  private final ControlView control;
  private final EntryService door;

  HandSwitching(ControlView control, EntryService door) {
    this.control = control;
    this.door = door;
  }

  /** Says that an output is to be on or off until a time. */
  void command(ManualCommand command, Instant now) throws SwitchingRefused {
    ControlReport report = report();
    RoomState state = room(report, command.room());
    Output output = output(state, command.kind());
    OutputDecision ruling = state.rulings().get(output.kind());
    Precedence right = command.on() ? Precedence.MANUAL_ON : Precedence.MANUAL_OFF;
    if (ruling != null && ruling.on() != command.on() && ruling.right().compareTo(right) < 0) {
      throw new SwitchingRefused(
          "The %s cannot be switched %s now. %s"
              .formatted(
                  output.kind().word(), command.on() ? "on" : "off", ruling.reason().sentence()));
    }
    SwitchedByHand said =
        new SwitchedByHand(command.room(), output.kind(), command.on(), command.until(), now);
    Optional<String> refusal = refusal(state.room(), said, now);
    if (refusal.isPresent()) {
      throw new SwitchingRefused(refusal.get());
    }
    say(said, command.by(), command.request(), now);
  }

  /** Off is never refused for what stands in the journal, on is. */
  private Optional<String> refusal(Room room, SwitchedByHand said, Instant now) {
    if (said.on() && control.silence() != null) {
      return Optional.of("Nothing can be switched on now. " + control.silence());
    }
    return HandCommands.refusal(List.of(room), said, now)
        .or(
            () ->
                said.on() && NewerEntries.in(door.journal()).isAbout(room)
                    ? Optional.of(
                        "A newer version of this program said something of room "
                            + room.name()
                            + " that this version cannot read: nothing there is switched on by hand"
                            + " until the newer version runs again.")
                    : Optional.empty());
  }

  /** Says that an output is to run by itself again. */
  void release(String room, String kind, String by, Instant now) throws SwitchingRefused {
    OutputKind part = output(room(report(), room), kind).kind();
    say(new LetRun(room, part, now), by, UUID.randomUUID().toString(), now);
  }

  private void say(Entry entry, String by, String request, Instant now) throws SwitchingRefused {
    Optional<String> refusal;
    try {
      refusal = door.say(entry, by, request, OptionalLong.empty(), now).refusal();
    } catch (StoreException e) {
      throw new SwitchingRefused("It could not be kept: " + e.getMessage());
    }
    if (refusal.isPresent()) {
      throw new SwitchingRefused(refusal.get());
    }
    control.lookAtJournal();
  }

  /** What control held by hand when it told last, and what was said since that it has not heard. */
  HandCommands inForce(ControlReport report, Instant now) {
    Map<String, List<rindward.controller.room.ManualCommand>> inForce = new HashMap<>();
    report
        .snapshot()
        .rooms()
        .forEach(state -> inForce.put(state.room().name(), state.demand().commands()));
    List<Recorded> unheard =
        door.journal().stream().filter(recorded -> recorded.id() > report.heard()).toList();
    return HandCommands.of(inForce).after(unheard, (by, least) -> true, now);
  }

  private ControlReport report() throws SwitchingRefused {
    ControlReport report = control.latest();
    if (report == null) {
      String silence = control.silence();
      throw new SwitchingRefused(
          silence == null
              ? "The rooms have not been looked at yet; try again in a moment."
              : silence);
    }
    return report;
  }

  private static RoomState room(ControlReport report, String name) throws SwitchingRefused {
    for (RoomState state : report.snapshot().rooms()) {
      if (state.room().name().equals(name)) {
        return state;
      }
    }
    throw new SwitchingRefused("There is no room " + name + ".");
  }

  private static Output output(RoomState state, String kind) throws SwitchingRefused {
    for (Output output : state.room().outputs().values()) {
      if (output.kind().word().equals(kind)) {
        return output;
      }
    }
    throw new SwitchingRefused("The room " + state.room().name() + " has no " + kind + ".");
  }
}
