package rindward.controller.control.rule;

import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.control.Situation;
import rindward.controller.room.ManualCommand;

/** What a person has switched by hand, until it ends. */
final class ManualRule implements Rule {
  @Override
  public void consider(Situation situation, OutputRequests wishes) {
    for (ManualCommand command : situation.order().commands()) {
      if (!command.until().isAfter(situation.now().at())) {
        continue;
      }
      long leftSeconds = command.until().getEpochSecond() - situation.now().at().getEpochSecond();
      int leftMinutes = Math.toIntExact(Math.min(leftSeconds / 60 + 1, 100_000));
      Reason reason =
          new Reason(
              command.on() ? ReasonCode.ON_BY_HAND : ReasonCode.OFF_BY_HAND, leftMinutes * 1000, 0);
      if (command.on()) {
        wishes.on(command.kind(), Precedence.MANUAL_ON, reason);
      } else {
        wishes.off(command.kind(), Precedence.MANUAL_OFF, reason);
      }
    }
  }
}
