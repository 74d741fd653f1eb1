package rindward.controller.command.shed;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.command.base.Three;
import rindward.controller.crop.RateCurve;
import rindward.controller.exchange.Recording;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.BoundedTotal;

/** The keys of {@code replay --json}; times in seconds, cure progress 1 when done. */
record ReplayAnswer(
    long rows,
    long rejectedRows,
    Instant first,
    Instant last,
    double elapsedSeconds,
    double unknownSeconds,
    Three inRange,
    Three tooCold,
    Three tooWarm,
    Three tooDry,
    Three tooDamp,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Three cureProgress) {

  private static final double MILLIS_PER_SECOND = 1000;

  static ReplayAnswer of(
      Recording recording, Account account, Optional<BoundedTotal> cureProgress) {
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
        cureProgress.map(progress -> Three.of(progress, RateCurve.WHOLE)).orElse(null));
  }

  private static Three seconds(BoundedTotal millis) {
    return Three.of(millis, MILLIS_PER_SECOND);
  }
}
