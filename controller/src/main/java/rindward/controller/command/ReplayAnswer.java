package rindward.controller.command;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.controller.exchange.Recording;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.Tally;

/** The keys of {@code replay --json}; times in seconds, cure progress 1 when done. */
record ReplayAnswer(
    long rows,
    long rejectedRows,
    Instant first,
    Instant last,
    double elapsedSeconds,
    double unknownSeconds,
    Thrice inRange,
    Thrice tooCold,
    Thrice tooWarm,
    Thrice tooDry,
    Thrice tooDamp,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Thrice cureProgress) {

  private static final double MILLIS_PER_SECOND = 1000;

  /** One total as measured, at least, and at most. */
  record Thrice(double measured, double certain, double possible) {
    static Thrice of(Tally tally, double unit) {
      return new Thrice(tally.measured() / unit, tally.certain() / unit, tally.possible() / unit);
    }
  }

  static ReplayAnswer of(Recording recording, Account account) {
    return new ReplayAnswer(
        recording.rows(),
        recording.rejectedRows(),
        Instant.ofEpochMilli(recording.firstMillis()),
        Instant.ofEpochMilli(recording.lastMillis()),
        account.elapsedMillis() / MILLIS_PER_SECOND,
        account.unknownMillis() / MILLIS_PER_SECOND,
        seconds(account.inRange()),
        seconds(account.tooCold()),
        seconds(account.tooWarm()),
        seconds(account.tooDry()),
        seconds(account.tooDamp()),
        null);
  }

  private static Thrice seconds(Tally millis) {
    return Thrice.of(millis, MILLIS_PER_SECOND);
  }
}
