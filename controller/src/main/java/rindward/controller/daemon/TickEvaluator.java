package rindward.controller.daemon;

import rindward.controller.alarm.Judgement;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Tick;

/** Makes up its mind about the alarms after each tick, on the control thread; never waits. */
@FunctionalInterface
interface TickEvaluator {
  /** Nobody looks. */
  TickEvaluator NOBODY = (snapshot, now) -> Judgement.NONE;

  Judgement judge(ShedSnapshot snapshot, Tick now);
}
