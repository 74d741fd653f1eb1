package rindward.controller.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import rindward.controller.crop.Crop;
import rindward.controller.desk.LotAccounts;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Entry.Harvested;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Recorded;
import rindward.controller.settings.CropGuideReader;

/**
 * What the pages ask for: all that a lot of butternut has lived through over the season, its cure
 * progress too, when everything has to be read, and when the days before today are remembered.
 */
final class WholeLife {
  private static final int TIMES = 21;

  private WholeLife() {}

  public static void main(String[] args) {
    Instant harvest = Instant.ofEpochSecond(Season.FROM_SECOND);
    Instant now = Instant.ofEpochSecond(Season.TO_SECOND);
    List<Recorded> journal =
        List.of(
            new Recorded(
                1, harvest, "Ada", new Harvested("B1", "butternut", "", 60, Season.ROOM, harvest)));
    Lot lot = Lots.of(journal).find("B1").orElseThrow();
    Crop crop = CropGuideReader.builtIn().crop("butternut").orElseThrow();
    try (DayChunks chunks = new DayChunks()) {
      chunks.open(Path.of(args[0]));
      LotAccounts accounts =
          new LotAccounts(chunks::history, Duration.ofSeconds(Season.HOLD_SECONDS));
      LotAccount answer = accounts.of(lot, crop, journal, now);
      long[] forgotten = new long[TIMES];
      long[] remembered = new long[TIMES];
      for (int i = 0; i < TIMES; i++) {
        accounts.forget();
        forgotten[i] = nanos(accounts, lot, crop, journal, now, answer);
        remembered[i] = nanos(accounts, lot, crop, journal, now, answer);
      }
      Arrays.sort(forgotten);
      Arrays.sort(remembered);
      System.out.println(forgotten[TIMES / 2] + " " + remembered[TIMES / 2]);
    }
  }

  private static long nanos(
      LotAccounts accounts,
      Lot lot,
      Crop crop,
      List<Recorded> journal,
      Instant now,
      LotAccount expected) {
    long before = System.nanoTime();
    LotAccount answer = accounts.of(lot, crop, journal, now);
    long nanos = System.nanoTime() - before;
    if (!answer.equals(expected)) {
      throw new IllegalStateException("remembering changed the answer to " + answer);
    }
    return nanos;
  }
}
