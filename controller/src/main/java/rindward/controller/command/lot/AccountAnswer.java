package rindward.controller.command.lot;

import rindward.controller.command.base.Three;
import rindward.controller.ledger.Account;

/** An account as {@code --json} shows it, in seconds with their fractions. */
record AccountAnswer(
    double elapsedSeconds,
    double unknownSeconds,
    Three inRange,
    Three tooCold,
    Three tooWarm,
    Three tooDry,
    Three tooDamp) {
  private static final double SECOND = 1000;

  static AccountAnswer of(Account account) {
    return new AccountAnswer(
        account.elapsedMillis() / SECOND,
        account.unknownMillis() / SECOND,
        Three.of(account.inRange(), SECOND),
        Three.of(account.tooCold(), SECOND),
        Three.of(account.tooWarm(), SECOND),
        Three.of(account.tooDry(), SECOND),
        Three.of(account.tooDamp(), SECOND));
  }
}
