package rindward.controller.daemon;

import rindward.controller.alarm.Judgement;
import rindward.controller.control.Tick;
import rindward.controller.snapshot.Snapshot;

/** Makes up its mind about the alarms after each tick, on the control thread; never waits. */
@FunctionalInterface
interface Judge {
  /** Nobody looks. */
  Judge NOBODY = (snapshot, now) -> Judgement.NONE;

  Judgement judge(Snapshot snapshot, Tick now);
}
