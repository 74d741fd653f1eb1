package rindward.controller.control;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rindward.controller.room.Output;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/** The decision for one room: the rules wish, the strongest right wins, then the timers. */
public final class Control {
  /** In the order in which they speak; the last one looks at what the others wished. */
  private static final List<Rule> RULES =
      List.of(new NothingKnown(), new Heating(), new Humidifying(), new Circulating());

  private Control() {}

  /** Decides what a room's outputs do from now on. Pure; call it once a tick. */
  public static Decision decide(Memory memory, Room room, Picture picture, Tick now) {
    Situation situation = new Situation(memory, room, picture, now);
    Wishes wishes = new Wishes();
    for (Rule rule : RULES) {
      rule.consider(situation, wishes);
    }
    Map<OutputKind, Ruling> rulings = new EnumMap<>(OutputKind.class);
    for (Output output : room.outputs().values()) {
      Ruling wished = wishes.of(output.kind());
      rulings.put(
          output.kind(),
          room.observeOnly()
              ? new Ruling(false, Right.HARDWARE_LIMIT, Reason.of(Because.OBSERVE_ONLY))
              : MinimumTimes.apply(output, memory.switched(output.kind()), wished, now.nanos()));
    }
    return new Decision(rulings, memory.after(rulings, now.nanos()));
  }
}
