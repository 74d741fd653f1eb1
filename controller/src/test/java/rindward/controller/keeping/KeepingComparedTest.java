package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Fruits of one lot fail together. Two varieties that keep alike are told apart in at most 7 % of
 * cases, whatever the spread between lots; with fruits as the unit it was 24 to 68 %.
 */
class KeepingComparedTest {
  private static final int CASES = 1000;

  @Test
  void varietiesThatKeepAlike_areHardlyEverToldApart() {
    SplittableRandom random = new SplittableRandom(18);
    for (double spread : new double[] {0, 0.5, 1}) {
      for (int[] design : new int[][] {{1, 12}, {1, 30}, {4, 12}, {6, 12}}) {
        assertThat(told(design[0], design[1], spread, 1, random))
            .as("%d lots of %d, spread %.1f", design[0], design[1], spread)
            .isLessThanOrEqualTo(0.07);
      }
    }
  }

  @Test
  void threefoldRateOfLoss_isFoundWithSixLotsOfEach() {
    assertThat(told(6, 12, 0.5, 3, new SplittableRandom(6))).isGreaterThanOrEqualTo(0.7);
  }

  @Test
  void oneLotEach_saysSomethingOfTheLotsAndNothingOfTheVarieties() {
    KeepingCompared compared =
        KeepingCompared.between(
                List.of(lot("2025 store", 20, 30, 40)), List.of(lot("2025 store", 90, 95, 99)))
            .orElseThrow();
    assertThat(compared.sentence("Winterglut", "Sunrim"))
        .isEqualTo(
            "With one lot each, these lots differed; of the varieties Winterglut and Sunrim nothing"
                + " can be said. 4 lots of each, side by side in one season and room, can show a"
                + " large difference, 6 of each mostly do.");
  }

  @Test
  void threeLotsEach_cannotTellWhateverBecomesOfThem_andSayHowManyCould() {
    List<KeptLot> early = List.of(lot("a", 10, 11), lot("a", 12, 13), lot("a", 14, 15));
    List<KeptLot> late = List.of(lot("a", 80, 81), lot("a", 82, 83), lot("a", 84, 85));
    KeepingCompared compared = KeepingCompared.between(early, late).orElseThrow();
    // 2 of the 20 ways to choose three of six.
    assertThat(compared.p().value()).isEqualTo(0.1);
    assertThat(compared.couldTell()).isFalse();
    assertThat(compared.sentence("Early", "Late"))
        .startsWith(
            "3 lots of Early and 3 of Late are too few to show which keeps longer, whatever becomes"
                + " of them (p 0.10 at best). 4 lots of each");
  }

  @Test
  void lots_areComparedOnlyWithinTheirSeasonAndRoom() {
    assertThat(
            KeepingCompared.between(
                List.of(lot("2024 store", 20, 30)), List.of(lot("2025 store", 90, 95))))
        .isEmpty();
    List<KeptLot> first = new ArrayList<>();
    List<KeptLot> second = new ArrayList<>();
    for (int season = 0; season < 5; season++) {
      // Every season keeps three times as long as the one before; within each the second keeps.
      int days = 10 + 30 * season;
      first.add(lot("season " + season, days, days + 1));
      first.add(lot("season " + season, days + 2, days + 3));
      second.add(lot("season " + season, days + 20, days + 21));
      second.add(lot("season " + season, days + 22, days + 23));
    }
    KeepingCompared compared = KeepingCompared.between(first, second).orElseThrow();
    // 2 of 6^5 ways, all seasons being turned the same way.
    assertThat(compared.p().value()).isEqualTo(2 / 7776.0);
    assertThat(compared.sentence("A", "B")).startsWith("B keeps longer than A");
  }

  private static double told(
      int lots, int fruits, double spread, double ratio, SplittableRandom random) {
    int told = 0;
    for (int i = 0; i < CASES; i++) {
      boolean found =
          KeepingCompared.between(
                  drawn(lots, fruits, spread, ratio, random),
                  drawn(lots, fruits, spread, 1, random))
              .filter(c -> c.couldTell() && c.p().isSignificant())
              .isPresent();
      told += found ? 1 : 0;
    }
    return (double) told / CASES;
  }

  /** Fruits lost at a constant rate of one in 120 days, looked at until day 150. */
  private static List<KeptLot> drawn(
      int lots, int fruits, double spread, double ratio, SplittableRandom random) {
    List<KeptLot> drawn = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      double rate = ratio * Math.exp(spread * random.nextGaussian()) / 120;
      List<Fate> fates = new ArrayList<>();
      for (int fruit = 0; fruit < fruits; fruit++) {
        int day = (int) Math.ceil(-Math.log(1 - random.nextDouble()) / rate);
        fates.add(
            day > 150
                ? new Fate(150, 1, Ending.STILL_SOUND)
                : new Fate(Math.max(1, day), 1, Ending.LOST));
      }
      drawn.add(new KeptLot("one season", fates));
    }
    return drawn;
  }

  private static KeptLot lot(String beside, int... days) {
    List<Fate> fates = new ArrayList<>();
    for (int day : days) {
      fates.add(new Fate(day, 1, Ending.LOST));
    }
    return new KeptLot(beside, fates);
  }
}
