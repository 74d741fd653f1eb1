package rindward.controller.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import rindward.controller.crop.Crop;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.settings.CropGuideReader;

/**
 * What an hour's first look costs: all that a lot of butternut has lived through over the season,
 * its cure progress too, added up anew. Pages remember it for the rest of the hour.
 */
final class WholeLife {
  private static final int TIMES = 21;
  private static final long HOLD_MILLIS = 1000 * Season.HOLD_SECONDS;

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
      List<Exposure> life = Exposure.of(lot, Accuracies.of(journal), chunks::history, now);
      LotAccount answer = LotAccount.of(life, crop, HOLD_MILLIS);
      long[] nanos = new long[TIMES];
      for (int i = 0; i < TIMES; i++) {
        long before = System.nanoTime();
        LotAccount again = LotAccount.of(life, crop, HOLD_MILLIS);
        nanos[i] = System.nanoTime() - before;
        if (!again.equals(answer)) {
          throw new IllegalStateException("the same life was told as " + again);
        }
      }
      Arrays.sort(nanos);
      System.out.println(nanos[TIMES / 2]);
    }
  }
}
