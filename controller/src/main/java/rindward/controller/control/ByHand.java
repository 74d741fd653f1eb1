package rindward.controller.control;

import rindward.controller.room.ManualCommand;

/** What a person has switched by hand, until it ends. */
final class ByHand implements Rule {
  @Override
  public void consider(Situation situation, Wishes wishes) {
    for (ManualCommand command : situation.order().commands()) {
      if (!command.until().isAfter(situation.now().at())) {
        continue;
      }
      long leftSeconds = command.until().getEpochSecond() - situation.now().at().getEpochSecond();
      int leftMinutes = Math.toIntExact(Math.min(leftSeconds / 60 + 1, 100_000));
      Reason reason =
          new Reason(
              command.on() ? Because.ON_BY_HAND : Because.OFF_BY_HAND, leftMinutes * 1000, 0);
      if (command.on()) {
        wishes.on(command.kind(), Right.MANUAL_ON, reason);
      } else {
        wishes.off(command.kind(), Right.MANUAL_OFF, reason);
      }
    }
  }
}
