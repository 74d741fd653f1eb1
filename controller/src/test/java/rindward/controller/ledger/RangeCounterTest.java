package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.hardware.Thousandths;

/** The account told in cases a grower could check with a pencil. */
class RangeCounterTest {
  private static final Range STORE =
      new Range(new Limits(10_000, 15_000), new Limits(50_000, 70_000));
  private static final long MINUTE = 60_000;
  private static final long HOLD = 5 * MINUTE;

  @Test
  void account_sampleExactlyOnALimit_countsAsInside() {
    Account account = storeFor(10_000, 70_000);

    assertThat(account.inRange().measured()).isEqualTo(MINUTE);
  }

  @Test
  void account_oneThousandthBeyondALimit_countsAsOutside() {
    assertThat(storeFor(9_999, 60_000).tooCold().measured()).isEqualTo(MINUTE);
    assertThat(storeFor(15_001, 60_000).tooWarm().measured()).isEqualTo(MINUTE);
    assertThat(storeFor(12_000, 49_999).tooDry().measured()).isEqualTo(MINUTE);
    assertThat(storeFor(12_000, 70_001).tooDamp().measured()).isEqualTo(MINUTE);
  }

  @Test
  void account_coldAndDamp_countsBothButOutOfRangeOnce() {
    Account account = storeFor(8_000, 90_000);

    assertThat(account.tooCold().measured()).isEqualTo(MINUTE);
    assertThat(account.tooDamp().measured()).isEqualTo(MINUTE);
    assertThat(account.outOfRangeMillis()).isEqualTo(MINUTE);
  }

  @Test
  void account_gapLongerThanTheHoldLimit_isUnknownBeyondIt() {
    History twoSamplesAnHourApart =
        (from, to, visit) -> {
          visit.accept(Run.of(0, 12_000, 60_000));
          visit.accept(Run.of(60 * MINUTE, 12_000, 60_000));
        };

    Account account =
        RangeCounter.account(twoSamplesAnHourApart, STORE, Accuracy.EXACT, 0, 60 * MINUTE, HOLD);

    assertThat(account.inRange().measured()).isEqualTo(HOLD);
    assertThat(account.unknownMillis()).isEqualTo(55 * MINUTE);
  }

  @Test
  void account_rangeNarrowerThanTheProbesAccuracy_isNeverCertain() {
    Range narrow = new Range(new Limits(12_000, 12_500), new Limits(50_000, 70_000));

    Account account =
        RangeCounter.account(
            oneSample(12_200, 60_000), narrow, new Accuracy(300, 2_000), 0, MINUTE, HOLD);

    assertThat(account.inRange()).isEqualTo(new BoundedTotal(0, MINUTE, MINUTE));
  }

  @Test
  void account_temperatureAlone_provesColdButNeverInRange() {
    assertThat(storeFor(8_000, Thousandths.NONE).outOfRangeMillis()).isEqualTo(MINUTE);
    assertThat(storeFor(12_000, Thousandths.NONE).unknownMillis()).isEqualTo(MINUTE);
  }

  @Test
  void account_overTheNightTheClocksGoBack_hasTwentyFiveHours() {
    ZoneId zone = ZoneId.of("America/Chicago");
    ZonedDateTime midnight = ZonedDateTime.of(2026, 11, 1, 0, 0, 0, 0, zone);
    long from = midnight.toInstant().toEpochMilli();
    long to = midnight.plusDays(1).toInstant().toEpochMilli();
    History everyMinute =
        (f, t, visit) -> {
          for (long at = from; at < to; at += MINUTE) {
            visit.accept(Run.of(at, 12_000, 60_000));
          }
        };

    Account account = RangeCounter.account(everyMinute, STORE, Accuracy.EXACT, from, to, HOLD);

    assertThat(account.inRange().measured()).isEqualTo(Duration.ofHours(25).toMillis());
  }

  private static Account storeFor(int temperatureMilliC, int humidityMilliPct) {
    return RangeCounter.account(
        oneSample(temperatureMilliC, humidityMilliPct), STORE, Accuracy.EXACT, 0, MINUTE, HOLD);
  }

  private static History oneSample(int temperatureMilliC, int humidityMilliPct) {
    return (from, to, visit) -> visit.accept(Run.of(0, temperatureMilliC, humidityMilliPct));
  }
}
