package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.crop.Crop;
import rindward.controller.crop.RateCurve;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.CropGuideReader;

/**
 * A lot's life from curing to keeping. Cure rates: nothing at 15 C, 1/14 a day at 21 C, 1/10 a day
 * from 27 to 30 C (ten days at 27-29 C: University of Delaware 2020; the lower points are common
 * practice).
 */
class LotAccountTest {
  private static final Crop BUTTERNUT = CropGuideReader.builtIn().crop("butternut").orElseThrow();
  private static final Instant HARVEST = Instant.parse("2026-09-20T00:00:00Z");
  private static final long HOUR = 3_600_000;
  private static final long DAY = 24 * HOUR;
  private static final long HOLD = 300_000;

  /** A warm, dry curing room and a cool store, each measured every minute for sixty days. */
  private static final History WARM = steady(28_000, 50_000);

  private static final History COOL = steady(12_500, 60_000);

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void tenWarmDays_cureButternut_howeverDryTheAir() {
    said(harvested());

    LotAccount account = account(day(12));

    assertThat(account.curedAt()).isBetween(day(10).minusSeconds(60), day(10));
    assertThat(account.curing().tooDry().measured()).isEqualTo(account.curing().elapsedMillis());
    assertThat(account.keeping().elapsedMillis())
        .isEqualTo(Duration.between(account.curedAt(), day(12)).toMillis());
  }

  @Test
  void movedHalfCured_progressStopsInTheCool_andItIsStillCuring() {
    said(harvested());
    said(new Moved("BN1", "storage", day(5)));

    LotAccount account = account(day(20));

    assertThat(account.curedAt()).isNull();
    assertThat(account.cureProgress().measured() / (double) RateCurve.WHOLE).isBetween(0.5, 0.5001);
    assertThat(account.curing().tooCold().measured()).isEqualTo(15 * DAY);
  }

  @Test
  void unmeasuredPlace_isUnknownTime_andCuresNothing() {
    said(new Harvested("BN1", "butternut", "", 60, "porch", HARVEST));

    LotAccount account = account(day(10));

    assertThat(account.curing().unknownMillis()).isEqualTo(10 * DAY);
    assertThat(account.cureProgress()).isEqualTo(BoundedTotal.ZERO);
  }

  @Seeded(cases = 50)
  void correctedMove_equalsTellingItRightFromTheStart(Any any) {
    int wrongHour = any.intBetween(1, 400);
    int rightHour = any.intBetween(1, 400);
    journal.clear();
    said(harvested());
    long wrong = said(new Moved("BN1", "storage", hour(wrongHour)));
    said(new Corrected(wrong, new Moved("BN1", "storage", hour(rightHour))));
    LotAccount corrected = account(day(20));

    journal.clear();
    said(harvested());
    said(new Moved("BN1", "storage", hour(rightHour)));

    assertThat(corrected).isEqualTo(account(day(20)));
  }

  @Seeded(cases = 50)
  void cuttingALifeAnywhere_changesNothing(Any any) {
    int minute = any.intBetween(1, 28_000);
    journal.clear();
    said(harvested());
    said(new Moved("BN1", "storage", day(12)));
    LotAccount whole = account(day(20));
    long cut = HARVEST.toEpochMilli() + minute * 60_000L + 7;

    List<Exposure> pieces = new ArrayList<>();
    for (Exposure e : life(day(20))) {
      if (e.fromMillis() < cut && cut < e.toMillis()) {
        pieces.add(new Exposure(e.history(), e.accuracy(), e.fromMillis(), cut));
        pieces.add(e.from(cut));
      } else {
        pieces.add(e);
      }
    }

    assertThat(LotAccount.of(pieces, BUTTERNUT, HOLD)).isEqualTo(whole);
  }

  @Test
  void accuracyStatedLater_doesNotRewriteWhatWasCertainBefore() {
    said(harvested());
    said(new AccuracyStated("curing", 1_500, 0, day(2)));

    LotAccount account = account(day(4));

    BoundedTotal cure = account.cureProgress();
    assertThat(cure.certain()).isLessThan(cure.measured());
    journal.remove(1);
    LotAccount exact = account(day(2));
    assertThat(exact.cureProgress().certain()).isEqualTo(exact.cureProgress().measured());
    assertThat(cure.certain()).isGreaterThan(exact.cureProgress().certain());
  }

  private LotAccount account(Instant now) {
    return LotAccount.of(life(now), BUTTERNUT, HOLD);
  }

  private List<Exposure> life(Instant now) {
    return Exposure.of(
        Lots.of(journal).find("BN1").orElseThrow(),
        Accuracies.of(journal),
        LotAccountTest::historyOf,
        now);
  }

  private static History historyOf(String place) {
    return switch (place) {
      case "curing" -> WARM;
      case "storage" -> COOL;
      default -> (from, to, visit) -> {};
    };
  }

  private static History steady(int temperatureMilliC, int humidityMilliPct) {
    int minutes = 60 * 24 * 60;
    int[] temperature = new int[minutes];
    int[] humidity = new int[minutes];
    java.util.Arrays.fill(temperature, temperatureMilliC);
    java.util.Arrays.fill(humidity, humidityMilliPct);
    Run run = new Run(HARVEST.toEpochMilli(), 60_000, minutes, temperature, humidity);
    return (from, to, visit) -> visit.accept(run);
  }

  private long said(Entry entry) {
    long id = journal.size() + 1L;
    journal.add(new Recorded(id, HARVEST, "Wren", entry));
    return id;
  }

  private static Harvested harvested() {
    return new Harvested("BN1", "butternut", "Long Meg", 60, "curing", HARVEST);
  }

  private static Instant day(int day) {
    return HARVEST.plusMillis(DAY * day);
  }

  private static Instant hour(int hour) {
    return HARVEST.plusMillis(HOUR * hour);
  }
}
