package rindward.controller.control;

import java.util.List;
import rindward.controller.room.Order;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;

/** The control with one of its rules taken out, to see what the rule is worth. */
public final class Ablations {
  private Ablations() {}

  /** Without the cap on the dew point: fruit may get wet. */
  public static Controller withoutDewPointCap() {
    return without(Condensation.class);
  }

  /** Without the limit on how far airing may cool the air. */
  public static Controller withoutTrough() {
    return without(Trough.class);
  }

  /** With the narrowest dead band instead of one as wide as the heater's swing. */
  public static Controller withoutLearnedBand() {
    Control control = new Control();
    return new Controller() {
      @Override
      public Decision decide(
          Memory memory, Room room, Order order, Picture picture, Picture outdoors, Tick now) {
        Learned learned = memory.learned();
        Learned nothing =
            new Learned(0, learned.answer(), learned.exhaustShare(), 1, learned.exhaustRuns());
        return control.decide(knowing(memory, nothing), room, order, picture, outdoors, now);
      }
    };
  }

  private static Memory knowing(Memory memory, Learned learned) {
    return new Memory(
        memory.outputs(),
        memory.startedNanos(),
        memory.nanos(),
        memory.air(),
        memory.outdoor(),
        learned,
        memory.heatedNanos(),
        memory.freshDue(),
        memory.slideC(),
        memory.share(),
        memory.duty(),
        memory.heatFailed(),
        memory.suspicion());
  }

  private static Controller without(Class<? extends Rule> left) {
    List<Rule> rules = Control.RULES.stream().filter(r -> !left.isInstance(r)).toList();
    return new Control(rules);
  }
}
