package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Used;

/** The verdict over a lot's life, and what is eaten first. */
class ReadinessTest {

  /** Windows: butternut best from 20-30 days on, kabocha from 10-20 (PMC11043848). */
  @ParameterizedTest
  @CsvSource({
    "kabocha,   5, CURING,",
    "kabocha,  15, READY, dry and mealy",
    "kabocha,  40, READY, dry and mealy or sweeter and moister",
    "kabocha,  75, READY, sweeter and moister",
    "kabocha, 100, CHECK_ONE,",
    "kabocha, 150, EAT_FIRST,",
    "kabocha, 250, CHECK_ONE,",
    "butternut, 15, RESTING,",
    "butternut, 45, READY, at its best",
    "acorn,     20, READY, fresh",
    "acorn,     50, EAT_FIRST,",
    "cheese,   240, CHECK_ONE,"
  })
  void wellKeptLot_goesThroughItsTimes(String crop, int day, State state, String phase) {
    Verdict verdict = kept(crop).verdict("K4T", day);

    assertThat(verdict.state()).isEqualTo(state);
    assertThat(verdict.phase().orElse(null)).isEqualTo(phase);
    assertThat(verdict.sureness()).isEqualTo(Sureness.MEASURED);
  }

  @Test
  void longLifeWithoutEvidence_isNotPast_withIt_itIs() {
    Trial trial = kept("kabocha");
    assertThat(trial.verdict("K4T", 250).reasons())
        .anyMatch(s -> s.contains("20 of 20 are sound, and nothing says they are bad"));

    trial.said(new Culled("K4T", 6, Cause.SOFT, "", day(245)));

    Verdict verdict = trial.verdict("K4T", 250);
    assertThat(verdict.state()).isEqualTo(State.PAST);
    assertThat(verdict.reasons()).contains("6 of 20 failed in the last 30 days (soft).");
  }

  @Test
  void failingYoung_isEatenFirst_notPast() {
    Trial trial = kept("kabocha").said(new Culled("K4T", 5, Cause.ROT, "", day(40)));

    assertThat(trial.verdict("K4T", 45).state()).isEqualTo(State.EAT_FIRST);
    assertThat(trial.verdict("K4T", 75).state()).isEqualTo(State.READY);
  }

  /** A fifth of what was there: 4 of 20. */
  @Test
  void aFifthLost_isFailing_lessIsNot() {
    assertThat(
            kept("kabocha")
                .said(new Culled("K4T", 4, Cause.ROT, "", day(40)))
                .verdict("K4T", 45)
                .state())
        .isEqualTo(State.EAT_FIRST);
    assertThat(
            kept("kabocha")
                .said(new Culled("K4T", 3, Cause.ROT, "", day(40)))
                .verdict("K4T", 45)
                .state())
        .isEqualTo(State.READY);
  }

  @Test
  void unmeasuredPlace_isToldAsTold_whenSomebodyAttests() {
    Trial trial = new Trial().said(new Harvested("K4T", "kabocha", "", 3, "porch", HARVEST));

    assertThat(trial.verdict("K4T", 14).state()).isEqualTo(State.CURE_NOT_KNOWN);
    assertThat(trial.verdict("K4T", 14).sureness()).isEqualTo(Sureness.ASSUMED);

    trial.said(new Attested("K4T", "stem dry, rind resists the nail", day(13)));

    Verdict told = trial.verdict("K4T", 16);
    assertThat(told.state()).isEqualTo(State.READY);
    assertThat(told.sureness()).isEqualTo(Sureness.TOLD);
    assertThat(told.reasons())
        .contains("Cured 13 days after harvest, as told: stem dry, rind resists the nail.");
  }

  @Test
  void nobodySaysAnything_theVerdictGoesOnHonestly() {
    Trial trial = new Trial().said(new Harvested("K4T", "kabocha", "", 3, "porch", HARVEST));

    Verdict verdict = trial.verdict("K4T", 60);

    assertThat(verdict.state()).isEqualTo(State.READY);
    assertThat(verdict.sureness()).isEqualTo(Sureness.ASSUMED);
    assertThat(verdict.reasons())
        .contains(
            "No whole cure was ever measured (0 %); it is taken as cured after the usual 14 days.");
  }

  @Test
  void movedHalfCured_needsTheRest_unlessItsTypeDoesWithout() {
    for (String crop : List.of("kabocha", "butternut")) {
      Trial trial =
          rooms()
              .said(new Harvested("K4T", crop, "", 20, "curing", HARVEST))
              .said(new Moved("K4T", "storage", day(5)));
      Verdict verdict = trial.verdict("K4T", 8);
      if (crop.equals("kabocha")) {
        assertThat(verdict.state()).isEqualTo(State.NOT_CURING);
        assertThat(verdict.reasons())
            .contains("It was moved at 50 % of a cure; it needs a whole one.");
      } else {
        assertThat(verdict.state()).isEqualTo(State.RESTING);
        assertThat(verdict.reasons())
            .contains("It had 50 % of a cure; butternut squash does well without.");
      }
    }
  }

  @Test
  void waterSoakedRind_isInjured_whateverTheThermometerSaid() {
    Trial trial = kept("kabocha").said(new FrostNoted("K4T", -900, 30, true, true, HARVEST));

    assertThat(trial.verdict("K4T", 20).state()).isEqualTo(State.INJURED);
    assertThat(trial.verdict("K4T", 20).reasons()).contains("Frost left its rind water-soaked.");
  }

  @Test
  void weekBelowTen_shortensItsLife() {
    Trial trial =
        new Trial()
            .place("curing", 28_000, 60_000)
            .place("porch", 9_000, 60_000)
            .place("storage", 12_500, 60_000)
            .said(new Harvested("K4T", "kabocha", "", 20, "curing", HARVEST))
            .said(new Moved("K4T", "porch", day(11)))
            .said(new Moved("K4T", "storage", day(20)));

    Verdict verdict = trial.verdict("K4T", 25);
    assertThat(verdict.state()).isEqualTo(State.EAT_FIRST);
    assertThat(verdict.reasons()).anyMatch(s -> s.startsWith("A week below 10 C shortens"));
  }

  @Test
  void severalCutFruitsWithFlatSeeds_condemnTheLot_oneOnlyCastsDoubt() {
    Trial trial =
        kept("kabocha").said(new RipenessNoted("K4T", RipenessSign.SEEDS_FLAT, 15, 40, 1, day(30)));
    assertThat(trial.verdict("K4T", 31).state()).isEqualTo(State.CHECK_ONE);
    assertThat(trial.verdict("K4T", 31).wouldChange())
        .isEqualTo(
            "Cut one that you did not choose by its looks, and note its seeds: 7 more with full"
                + " seeds and none flat clear the lot, 3 more with flat ones condemn it.");

    trial.said(new RipenessNoted("K4T", RipenessSign.SEEDS_FLAT, 15, 40, 4, day(40)));
    assertThat(trial.verdict("K4T", 41).state()).isEqualTo(State.UNLIKELY_EVER_GOOD);
  }

  @Test
  void severalCutFruitsWithFullSeeds_clearADoubtfulLot() {
    Trial trial =
        rooms()
            .said(
                new Harvested(
                    "K4T", "hubbard", "", 20, "storage", HARVEST, Grade.DOUBTFUL, null, null))
            .said(new RipenessNoted("K4T", RipenessSign.SEEDS_FULL, 45, 80, 1, day(30)));
    assertThat(trial.verdict("K4T", 31).state()).isEqualTo(State.CHECK_ONE);
    assertThat(trial.verdict("K4T", 31).reasons())
        .contains("One fruit was cut, and it was ripe: between 21 and 100 in 100 of the lot are.");

    trial.said(new RipenessNoted("K4T", RipenessSign.SEEDS_FULL, 45, 80, 4, day(40)));
    assertThat(trial.verdict("K4T", 41).state()).isEqualTo(State.READY);
  }

  @Test
  void oldEnoughToRipen_restsInTheWarm_thenIsCut() {
    Trial trial =
        rooms()
            .said(
                new Harvested("K4T", "hubbard", "", 8, "storage", HARVEST, Grade.GREEN, null, null))
            .said(new RipenessNoted("K4T", RipenessSign.TAGGED_SET, 38, 40, 0, HARVEST));

    assertThat(trial.verdict("K4T", 10).state()).isEqualTo(State.RESTING);
    assertThat(trial.verdict("K4T", 40).state()).isEqualTo(State.CHECK_ONE);
  }

  @Test
  void eatingOrder_skipsReservedAndUnready_andPutsTheShortLivedFirst() {
    Trial trial =
        rooms()
            .said(new Harvested("AAA", "acorn", "", 9, "storage", HARVEST))
            .said(new Harvested("BBB", "butternut", "", 9, "curing", HARVEST))
            .said(new Harvested("KKK", "kabocha", "", 9, "curing", HARVEST))
            .said(new Harvested("RRR", "kabocha", "", 3, "curing", HARVEST))
            .said(new Harvested("TTT", "kabocha", "", 3, "curing", HARVEST));
    for (String code : List.of("BBB", "KKK", "RRR", "TTT")) {
      trial.said(new Moved(code, "storage", day(11)));
    }
    trial
        .said(new Reserved("RRR", Purpose.KEEPER_TEST, 3, day(12)))
        .said(new Used("TTT", 3, Purpose.KITCHEN, day(13)));

    assertThat(order(trial, 15)).containsExactly("AAA", "KKK");
    assertThat(order(trial, 50)).containsExactly("AAA", "BBB", "KKK");
  }

  private static List<String> order(Trial trial, int day) {
    return EatingOrder.of(
            List.of("BBB", "KKK", "RRR", "TTT", "AAA").stream()
                .map(code -> trial.offer(code, day))
                .toList())
        .stream()
        .map(offer -> offer.lot().code())
        .toList();
  }

  /** Cured where it must be, and stored at 12.5 C and 60 % since. */
  private static Trial kept(String crop) {
    boolean cures = Trial.GUIDE.crop(crop).orElseThrow().cure().isPresent();
    Trial trial =
        rooms().said(new Harvested("K4T", crop, "", 20, cures ? "curing" : "storage", HARVEST));
    return cures ? trial.said(new Moved("K4T", "storage", day(11))) : trial;
  }

  private static Trial rooms() {
    return new Trial().place("curing", 28_000, 76_000).place("storage", 12_500, 60_000);
  }
}
