package rindward.controller.control.rule;

import rindward.controller.control.ControlInput;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.controller.room.ManualCommand;

/** What a person has switched by hand, until it ends. */
final class ManualRule implements Rule {
  @Override
  public void consider(ControlInput input, OutputRequests requests) {
    for (ManualCommand command : input.demand().commands()) {
      if (!command.until().isAfter(input.now().at())) {
        continue;
      }
      long leftSeconds = command.until().getEpochSecond() - input.now().at().getEpochSecond();
      int leftMinutes = Math.toIntExact(Math.min(leftSeconds / 60 + 1, 100_000));
      Reason reason =
          new Reason(
              command.on() ? ReasonCode.ON_BY_HAND : ReasonCode.OFF_BY_HAND, leftMinutes * 1000, 0);
      if (command.on()) {
        requests.on(command.kind(), Precedence.MANUAL_ON, reason);
      } else {
        requests.off(command.kind(), Precedence.MANUAL_OFF, reason);
      }
    }
  }
}
