package rindward.controller.control.rule;

import java.util.List;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Controller;
import rindward.controller.control.RoomDecision;
import rindward.controller.control.Rule;
import rindward.controller.control.Tick;
import rindward.controller.estimate.IdentifiedResponse;
import rindward.controller.estimate.RoomEstimate;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;

/** The control with one of its rules taken out, to see what the rule is worth. */
public final class Ablations {
  private Ablations() {}

  /** Without the cap on the dew point: fruit may get wet. */
  public static Controller withoutDewPointCap() {
    return without(CondensationRule.class);
  }

  /** Without the limit on how far airing may cool the air. */
  public static Controller withoutTrough() {
    return without(VentUndershootLimit.class);
  }

  /** With the narrowest dead band instead of one as wide as the heater's swing. */
  public static Controller withoutLearnedBand() {
    RuleBasedController control = new RuleBasedController();
    return new Controller() {
      @Override
      public RoomDecision decide(
          ControlMemory memory,
          Room room,
          RoomDemand demand,
          Picture picture,
          Picture outdoors,
          Tick now) {
        IdentifiedResponse learned = memory.estimate().response();
        IdentifiedResponse nothing =
            new IdentifiedResponse(
                0, learned.answer(), learned.exhaustShare(), 1, learned.exhaustRuns());
        return control.decide(knowing(memory, nothing), room, demand, picture, outdoors, now);
      }
    };
  }

  private static ControlMemory knowing(ControlMemory memory, IdentifiedResponse learned) {
    RoomEstimate known = memory.estimate();
    return memory.seeing(known.taught(learned, known.duty()), memory.heater(), memory.slideC());
  }

  private static Controller without(Class<? extends Rule> left) {
    List<Rule> rules = RuleBasedController.RULES.stream().filter(r -> !left.isInstance(r)).toList();
    return new RuleBasedController(rules);
  }
}
