package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Which share keeps until the grower's day, and how sure that is. */
class KeepingUntilTest {
  private static final int DAY = 120;

  @Test
  void oneLotWhollyRotten_saysUnlikely_andOneWhollySoundDoesNotSaySure() {
    KeepingUntil rotten = KeepingUntil.of(List.of(lot(0, 12)), DAY).orElseThrow();
    assertThat(rotten.chanceOfAtLeast(0.75)).isLessThan(0.02);
    assertThat(rotten.interval().high()).isLessThan(0.6);
    KeepingUntil sound = KeepingUntil.of(List.of(lot(12, 0)), DAY).orElseThrow();
    assertThat(sound.interval().low()).isLessThan(0.75);
    assertThat(sound.sentence()).contains("by one lot, so another lot may do otherwise");
  }

  @Test
  void fruitsOfOneLot_tellLessThanTheSameFruitsOfFour() {
    Interval one = KeepingUntil.of(List.of(lot(36, 12)), DAY).orElseThrow().interval();
    Interval four =
        KeepingUntil.of(List.of(lot(9, 3), lot(9, 3), lot(9, 3), lot(9, 3)), DAY)
            .orElseThrow()
            .interval();
    assertThat(four.high() - four.low()).isLessThan(0.8 * (one.high() - one.low()));
  }

  @Test
  void lotsThatAreNotOldEnough_tellNothing_andWhatWasEatenSoundIsNoLoss() {
    assertThat(
            KeepingUntil.of(
                List.of(new KeptLot("", List.of(new Fate(60, 12, Ending.STILL_SOUND)))), DAY))
        .isEmpty();
    KeptLot eaten =
        new KeptLot(
            "", List.of(new Fate(60, 8, Ending.USED_SOUND), new Fate(130, 4, Ending.STILL_SOUND)));
    assertThat(KeepingUntil.of(List.of(eaten), DAY).orElseThrow().share()).isGreaterThan(0.7);
  }

  @Test
  void lotsToKnow_areAskedForUntilItIsSettled() {
    assertThat(KeepingUntil.lotsToKnow(List.of(lot(11, 1)), DAY, 0.75))
        .hasValueSatisfying(more -> assertThat(more).isBetween(1, 6));
    assertThat(KeepingUntil.lotsToKnow(List.of(lot(0, 12)), DAY, 0.75)).isEmpty();
  }

  /** Truth drawn from the model: log-odds of lots about the variety's, spread half-normal. */
  @Test
  void intervalsHoldTheTruth() {
    SplittableRandom random = new SplittableRandom(12);
    int held = 0;
    int cases = 400;
    for (int i = 0; i < cases; i++) {
      double spread = Math.abs(random.nextGaussian());
      double uniform = random.nextDouble();
      double level = Math.log(uniform / (1 - uniform));
      List<KeptLot> lots = new ArrayList<>();
      for (int lot = 0; lot < 1 + i % 5; lot++) {
        double share = 1 / (1 + Math.exp(-level - spread * random.nextGaussian()));
        int sound = (int) random.doubles(12).filter(u -> u < share).count();
        lots.add(lot(sound, 12 - sound));
      }
      double truth = 0;
      for (int node = 0; node < 2000; node++) {
        truth += 1 / (1 + Math.exp(-level - spread * random.nextGaussian())) / 2000;
      }
      Interval interval = KeepingUntil.of(lots, DAY).orElseThrow().interval();
      held += interval.low() <= truth && truth <= interval.high() ? 1 : 0;
    }
    // 95 %, give or take three standard errors of 400 cases.
    assertThat((double) held / cases).isBetween(0.917, 0.983);
  }

  private static KeptLot lot(int sound, int lost) {
    List<Fate> fates = new ArrayList<>();
    if (sound > 0) {
      fates.add(new Fate(DAY + 10, sound, Ending.STILL_SOUND));
    }
    if (lost > 0) {
      fates.add(new Fate(DAY - 30, lost, Ending.LOST));
    }
    return new KeptLot("", fates);
  }
}
