package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.GUIDE;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import java.time.Duration;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.ledger.CureEnd;
import rindward.controller.ledger.CureEnd.How;
import rindward.controller.ledger.LotExposure;
import rindward.controller.variety.VarietyKeeping;

/** Whole invented seasons that must come out right. */
class SeasonTrialsTest {
  /** Warm days, cooler nights, 27.5 C in the mean; the air swings between 45 and 55 %. */
  private static Trial curingRoom() {
    return new Trial()
        .place(
            "curing",
            minute -> 27_500 + (int) (1_500 * Math.sin(minute * Math.PI / 720)),
            minute -> 50_000 - (int) (5_000 * Math.sin(minute * Math.PI / 720)))
        .said(new AccuracyStated("curing", 200, 3_000, HARVEST));
  }

  @Test
  void twelveWarmDryDays_cureSquashInTen_andTellTheWeight() {
    Trial trial = curingRoom().said(ripe("K4T", "kabocha", 40)).said(ripe("B3A", "butternut", 30));

    for (String code : List.of("K4T", "B3A")) {
      assertThat(trial.verdict(code, 6).state()).isEqualTo(State.CURING);
      CureEnd end = trial.lived(code, 12).cureEnd().orElseThrow();
      assertThat(end.how()).isEqualTo(How.MEASURED);
      assertThat(Duration.between(HARVEST, end.at()).toHours()).isBetween(9 * 24L, 11 * 24L);
      Verdict after = trial.verdict(code, 12);
      assertThat(after.reasons())
          .anyMatch(
              s ->
                  s.contains(
                      "Dry air cost about 2 points of weight more; the cure is not affected."));
      assertThat(after.sureness()).isEqualTo(Sureness.MEASURED);
    }
  }

  @Test
  void acornInTheCuringRoom_isWarnedOnDayNought_andNeverCuring() {
    Trial trial = curingRoom().said(ripe("A7A", "acorn", 20));
    Range warm = new Range(new Limits(27_000, 29_000), new Limits(75_000, 80_000));

    assertThat(PlaceFit.misfit(GUIDE.crop("acorn").orElseThrow(), warm, true))
        .hasValueSatisfying(
            s ->
                assertThat(s)
                    .contains("Acorn squash is not cured: warm days cost it quality and life."));
    assertThat(PlaceFit.misfit(GUIDE.crop("kabocha").orElseThrow(), warm, true)).isEmpty();
    for (int day = 0; day <= 12; day++) {
      assertThat(trial.verdict("A7A", day).state()).isEqualTo(State.READY);
    }
  }

  @Test
  void longSeasonType_cutTooSoon_isToldForTheRightReason() {
    Trial trial =
        new Trial()
            .said(picked("R7A", 2))
            .said(new RipenessNoted("R7A", RipenessSign.TAGGED_SET, 47, 47, 0, HARVEST))
            .said(picked("R7C", 4))
            .said(new RipenessNoted("R7C", RipenessSign.TAGGED_SET, 30, 30, 0, HARVEST))
            .said(new RipenessNoted("R7C", RipenessSign.SEEDS_FLAT, 15, 40, 1, day(60)))
            .said(new RipenessNoted("R7C", RipenessSign.FLESH_WATERY, 15, 45, 1, day(60)));
    for (String code : List.of("R7A", "R7C")) {
      trial.said(new RipenessNoted(code, RipenessSign.VINES_DEAD, 15, 80, 0, HARVEST));
      trial.said(new FrostNoted(code, -1_500, 90, true, false, HARVEST));
    }

    Verdict younger = trial.verdict("R7C", 60);
    assertThat(younger.state()).isEqualTo(State.UNLIKELY_EVER_GOOD);
    assertThat(younger.reasons())
        .contains(
            "It was picked 30 days after fruit set; large heirloom squash is ripe from 50 to 57.",
            "One fruit was cut, and it was not ripe: between 0 and 75 in 100 of the lot are.",
            "The frost of -1.5 C is not to blame: it left no water-soaked rind.");

    Verdict older = trial.verdict("R7A", 60);
    assertThat(older.state()).isEqualTo(State.CHECK_ONE);
    assertThat(older.reasons()).startsWith("Doubtful: cut one.");
    assertThat(older.reasons()).anyMatch(s -> s.startsWith("It was picked 47 days after"));
  }

  @Test
  void openDoor_ninetyMinutesAtSeven_isNoDoseForAThreeKiloFruit() {
    Trial trial =
        store(minute -> minute >= 72_000 && minute < 72_090 ? 7_000 : 13_000)
            .said(threeKilos("K4T"));

    LotExposure lived = trial.lived("K4T", 60);
    assertThat(lived.cold().airBelowMillis()).isEqualTo(Duration.ofMinutes(90).toMillis());
    assertThat(lived.cold().fruitBelowMillis()).isZero();
    assertThat(lived.cold().isInjured()).isFalse();
  }

  @Test
  void fourteenDaysAtSix_injureFruitThatLooksSound() {
    int day = 1_440;
    Trial trial =
        store(minute -> minute >= 30 * day && minute < 44 * day ? 6_000 : 13_000)
            .place("twin", 13_000, 60_000)
            .said(threeKilos("K4T"))
            .said(threeKilos("K4C"))
            .said(new Moved("K4C", "twin", day(1)));

    Verdict chilled = trial.verdict("K4T", 50);
    assertThat(chilled.state()).isEqualTo(State.INJURED);
    assertThat(chilled.reasons()).anyMatch(s -> s.startsWith("Two weeks this cold injure it"));
    assertThat(chilled.reasons())
        .as("an estimate is called one")
        .anyMatch(s -> s.contains("down to about 6.") && s.contains("reckoned from the air"));
    assertThat(chilled.expected().orElseThrow().what()).contains("decaying");
    assertThat(trial.verdict("K4C", 50).state()).isEqualTo(State.READY);
    assertThat(trial.lived("K4T", 50).spentMillis())
        .isGreaterThanOrEqualTo(trial.lived("K4C", 50).spentMillis());
    assertThat(EatingOrder.of(List.of(trial.offer("K4C", 50), trial.offer("K4T", 50))))
        .extracting(offer -> offer.lot().code())
        .containsExactly("K4T", "K4C");
    VarietyKeeping kept =
        VarietyKeeping.of(List.of(trial.grown("K4T", 50), trial.grown("K4C", 50)), day(50));
    assertThat(kept.leftOut()).containsExactly("K4T");
  }

  @Test
  void oneStoreForEverything_tellsEachItsOwnTruth() {
    Range air = new Range(new Limits(13_500, 13_500), new Limits(62_000, 62_000));

    assertThat(misfit("onion", air))
        .isEqualTo(
            "Onion: 13.5 C is too warm (best 0 to 1.7 C): expect 76 to 114 days instead of 180 to"
                + " 270. At 62 % it dries out and loses weight (best 65 to 70 %).");
    assertThat(misfit("garlic", air))
        .isEqualTo(
            "Garlic: 13.5 C is too warm (best 0 to 2 C): expect 69 to 103 days instead of 180 to"
                + " 270.");
    assertThat(misfit("sweet-potato", air))
        .isEqualTo("Sweet potato: At 62 % it dries out and loses weight (best 85 to 95 %).");
    assertThat(misfit("butternut", air))
        .isEqualTo(
            "Butternut squash: 13.5 C is a little warm (best 10 to 13 C): expect 57 to 173 days"
                + " instead of 60 to 180.");
  }

  @Test
  void rangeThatCropAndRoomBarelyShare_isToldAsNarrowerThanARoomCanHold() {
    var potato = GUIDE.crop("sweet-potato").orElseThrow();
    Limits best = potato.keeping().temperature().value();
    Range barely =
        new Range(new Limits(best.low() - 3_000, best.low() + 500), new Limits(60_000, 70_000));
    Range well =
        new Range(new Limits(best.low() - 3_000, best.low() + 1_500), new Limits(60_000, 70_000));

    assertThat(PlaceFit.tooNarrow(potato, barely, 300).orElseThrow())
        .contains("is narrower than a room can hold");
    assertThat(PlaceFit.tooNarrow(potato, well, 300)).isEmpty();
    assertThat(PlaceFit.tooNarrow(potato, well, 800)).isPresent();
  }

  private static String misfit(String crop, Range air) {
    return PlaceFit.misfit(GUIDE.crop(crop).orElseThrow(), air, false).orElseThrow();
  }

  private static Trial store(IntUnaryOperator temperatureMilliC) {
    return new Trial().place("storage", temperatureMilliC, minute -> 60_000);
  }

  private static Harvested threeKilos(String code) {
    return new Harvested(code, "kabocha", "", 20, "storage", HARVEST, Grade.RIPE, 60_000, null);
  }

  private static Harvested ripe(String code, String crop, int count) {
    return new Harvested(code, crop, "", count, "curing", HARVEST, Grade.RIPE, null, null);
  }

  private static Harvested picked(String code, int count) {
    return new Harvested(
        code, "heirloom-maxima", "", count, "porch", HARVEST, Grade.DOUBTFUL, null, "P7");
  }
}
