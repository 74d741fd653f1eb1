package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import rindward.controller.crop.Crop;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.History;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Recorded;

/**
 * Accounts of lots, remembered up to the last midnight (UTC) so that a page asks only for today.
 * What is remembered may be forgotten at any moment: {@link #forget()}. For any thread.
 */
public final class LotAccounts {
  private final Function<String, History> historyOf;
  private final Duration hold;
  private final Map<String, Remembered> byCode = new ConcurrentHashMap<>();

  /**
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param hold how long a sample holds at most
   */
  public LotAccounts(Function<String, History> historyOf, Duration hold) {
    this.historyOf = historyOf;
    this.hold = hold;
  }

  private record Remembered(Key key, LotAccount account) {}

  /** What the remembered account depends on: a corrected move makes it another life. */
  private record Key(Instant midnight, long lotVersion, long lastEntry) {}

  /** Returns a lot's account from harvest until now. */
  public LotAccount of(Lot lot, Crop crop, List<Recorded> journal, Instant now) {
    Instant midnight = now.truncatedTo(ChronoUnit.DAYS);
    Key key = new Key(midnight, lot.version(), journal.get(journal.size() - 1).id());
    Remembered known = byCode.get(lot.code());
    if (known == null || !known.key().equals(key)) {
      List<Exposure> before = Exposure.of(lot, journal, historyOf, midnight);
      known = new Remembered(key, LotAccount.of(before, crop, hold.toMillis()));
      byCode.put(lot.code(), known);
    }
    LotAccount account = known.account();
    for (Exposure stretch : Exposure.of(lot, journal, historyOf, now)) {
      if (stretch.toMillis() > midnight.toEpochMilli()) {
        account = account.then(stretch.from(midnight.toEpochMilli()), crop, hold.toMillis());
      }
    }
    return account;
  }

  /** Forgets everything remembered; the next answers are the same, and slower. */
  public void forget() {
    byCode.clear();
  }
}
