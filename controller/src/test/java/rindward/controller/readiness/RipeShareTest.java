package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.keeping.Interval;

/** What cut fruits tell of the rest of their lot. */
class RipeShareTest {
  /** Newcombe 1998, Statistics in Medicine 17: 857, table I, Wilson's score method. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    " 0,  20, 0.0000, 0.1611",
    " 1,  29, 0.0061, 0.1718"
  })
  void interval_isWilsons(int found, int of, double low, double high) {
    Interval interval = Interval.ofShare(found, of);
    assertThat(interval.low()).isCloseTo(low, within(0.00005));
    assertThat(interval.high()).isCloseTo(high, within(0.00005));
  }

  @Test
  void words_giveTheShareAndHowFarItMayBeOff() {
    assertThat(new RipeShare(2, 3, 20).sentence())
        .isEqualTo("Of 3 fruits cut, 2 were ripe: between 21 and 94 in 100 of the lot are.");
    assertThat(new RipeShare(0, 1, 20).sentence())
        .isEqualTo(
            "One fruit was cut, and it was not ripe: between 0 and 79 in 100 of the lot are.");
  }

  /** Of 4 fruits, 2 are known to be ripe: it is half of them, whatever the others are. */
  @Test
  void smallLot_isBoundedByWhatWasSeen() {
    RipeShare half = new RipeShare(2, 2, 4);
    assertThat(half.lowPerMille()).isEqualTo(500);
    assertThat(new RipeShare(0, 3, 5).highPerMille()).isEqualTo(400);
    assertThat(new RipeShare(1, 2, 2).sentence())
        .isEqualTo("Of 2 fruits cut, 1 was ripe: they were the whole lot.");
  }

  @Test
  void mostIsKnown_fromFourAlikeOn() {
    assertThat(new RipeShare(0, 3, 20).isMostlyUnripe()).isFalse();
    assertThat(new RipeShare(0, 4, 20).isMostlyUnripe()).isTrue();
    assertThat(new RipeShare(3, 3, 20).isMostlyRipe()).isFalse();
    assertThat(new RipeShare(4, 4, 20).isMostlyRipe()).isTrue();
  }

  @Seeded
  void interval_neverLeavesItsScale_andHoldsWhatWasSeen(Any any) {
    int cut = any.intBetween(1, 300);
    int ripe = any.intBetween(0, cut);
    int lot = any.intBetween(cut, 3 * cut);
    RipeShare share = new RipeShare(ripe, cut, lot);
    assertThat(share.lowPerMille()).isBetween(0, share.highPerMille());
    assertThat(share.highPerMille()).isLessThanOrEqualTo(1000);
    assertThat((long) share.lowPerMille() * cut).isLessThanOrEqualTo(1000L * ripe + cut);
    assertThat((long) share.highPerMille() * cut).isGreaterThanOrEqualTo(1000L * ripe - cut);
  }
}
