package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Crop;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.CureEnd.How;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.settings.CropGuideReader;

/**
 * By what a lot's curing ends: kabocha needs ten to fourteen days of it, butternut may do without.
 */
class CureEndTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T00:00:00Z");

  @Test
  void aTypeWithoutACure_keepsFromItsHarvestOn() {
    assertThat(end("acorn", null, 0, day(0))).contains(new CureEnd(HARVEST, How.NOT_NEEDED));
  }

  @Test
  void whatWasMeasured_orTold_whicheverCameFirst() {
    assertThat(end("kabocha", day(10), 1, day(20))).contains(new CureEnd(day(10), How.MEASURED));
    assertThat(end("kabocha", day(10), 1, day(20), told(9)))
        .contains(new CureEnd(day(9), How.TOLD));
    assertThat(end("kabocha", day(10), 1, day(20), told(10)))
        .contains(new CureEnd(day(10), How.MEASURED));
    assertThat(end("kabocha", null, 0, day(20), told(9))).contains(new CureEnd(day(9), How.TOLD));
  }

  @Test
  void aCureNobodyMeasured_endsAfterTwiceTheUsualTime_asAtItsUsualEnd() {
    assertThat(end("kabocha", null, 0, day(28).minusMillis(1))).isEmpty();
    assertThat(end("kabocha", null, 0, day(28))).contains(new CureEnd(day(14), How.WAITED_LONG));
  }

  @Test
  void whatDoesWellWithout_endsWhenItIsMovedOn_whatNeedsItDoesNot() {
    assertThat(end("butternut", null, 1, day(6), moved(5)))
        .contains(new CureEnd(day(5), How.MOVED_ON));
    assertThat(end("butternut", null, 1, day(6))).isEmpty();
    assertThat(end("kabocha", null, 1, day(6), moved(5))).isEmpty();
  }

  @Test
  void whatDoesWellWithout_andNeverBegan_wasNotBroughtInToBeCured() {
    assertThat(end("butternut", null, 0, day(2))).isEmpty();
    assertThat(end("butternut", null, 0, day(2).plusMillis(1)))
        .contains(new CureEnd(HARVEST, How.MOVED_ON));
    assertThat(end("butternut", null, 1, day(2).plusMillis(1))).isEmpty();
    assertThat(end("kabocha", null, 0, day(3))).isEmpty();
  }

  private static Optional<CureEnd> end(
      String type, @Nullable Instant measured, long progress, Instant now, Entry... more) {
    Crop crop = CropGuideReader.builtIn().crop(type).orElseThrow();
    List<Recorded> journal = new ArrayList<>();
    journal.add(
        new Recorded(1, HARVEST, "Wren", new Harvested("BN1", type, "", 9, "curing", HARVEST)));
    for (Entry entry : more) {
      journal.add(new Recorded(journal.size() + 1L, HARVEST, "Wren", entry));
    }
    Lot lot = Lots.of(journal).find("BN1").orElseThrow();
    BoundedTotal cured = new BoundedTotal(progress, progress, progress);
    return CureEnd.of(
        lot, crop, new LotAccount(Account.EMPTY, Account.EMPTY, cured, measured), now);
  }

  private static Entry told(int day) {
    return new Attested("BN1", "stem dry", day(day));
  }

  private static Entry moved(int day) {
    return new Moved("BN1", "storage", day(day));
  }

  private static Instant day(int day) {
    return HARVEST.plus(Duration.ofDays(day));
  }
}
