package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FieldDay;
import rindward.controller.journal.FieldDayNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Noted;
import rindward.controller.journal.OffTypeNoted;
import rindward.controller.journal.Planted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Recounted;
import rindward.controller.journal.Reserved;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Used;
import rindward.controller.journal.Weighed;
import rindward.controller.journal.Withdrawn;
import rindward.controller.settings.CropGuideReader;

/** Lots as the journal tells them, and what the journal does not take. */
class LotsTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();

  private static final Instant HARVEST = Instant.parse("2026-09-20T15:00:00Z");
  private static final Instant NOW = Instant.parse("2026-11-01T12:00:00Z");

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void of_lotThatMoved_hasStaysWithoutGaps() {
    said(harvested("KB1"));
    said(new Moved("KB1", "storage", day(10)));
    said(new Moved("KB1", "kitchen", day(40)));

    Lot lot = Lots.of(journal).find("KB1").orElseThrow();

    assertThat(lot.stays())
        .containsExactly(
            new Stay("curing", HARVEST, day(10)),
            new Stay("storage", day(10), day(40)),
            new Stay("kitchen", day(40), Instant.MAX));
    assertThat(lot.place()).isEqualTo("kitchen");
  }

  @Test
  void of_moveToldLate_isPutWhereItBelongs() {
    said(harvested("KB1"));
    said(new Moved("KB1", "kitchen", day(40)));
    said(new Moved("KB1", "storage", day(10)));

    assertThat(Lots.of(journal).find("KB1").orElseThrow().stays())
        .extracting(Stay::place)
        .containsExactly("curing", "storage", "kitchen");
  }

  @Test
  void of_correctedMove_isAsIfItHadBeenSaidRightAtOnce() {
    said(harvested("KB1"));
    long wrong = said(new Moved("KB1", "storage", day(10)));
    said(new Corrected(wrong, new Moved("KB1", "storage", day(9))));

    Lot lot = Lots.of(journal).find("KB1").orElseThrow();

    assertThat(lot.stays().get(0).to()).isEqualTo(day(9));
    assertThat(lot.version()).isEqualTo(3);
    assertThat(journal).hasSize(3);
  }

  private static Harvested harvestedAt(String code, Instant at) {
    return new Harvested(code, "kabocha", "", 4, "curing", at);
  }

  @Test
  void refusal_eachContradiction_isOneSentence() {
    said(harvested("KB1"));

    assertThat(refusal(harvested("KB1")))
        .contains("lot was 'KB1' but a lot of that code exists already");
    assertThat(refusal(new Harvested("KB2", "marrow", "", 4, "curing", HARVEST)))
        .contains("crop was 'marrow' but the crop guide has no type of that name");
    assertThat(refusal(new Harvested("kb 2", "kabocha", "", 4, "curing", HARVEST)))
        .contains("lot was 'kb 2' but it must be 1 to 12 capital letters, digits or hyphens");
    assertThat(refusal(new Harvested("KB2", "kabocha", "", 0, "curing", HARVEST)))
        .contains("count was '0' but it must be at least 1");
    assertThat(refusal(new Moved("KB9", "storage", day(1))))
        .contains("lot was 'KB9' but there is no lot of that code");
    assertThat(refusal(new Moved("KB1", "storage", HARVEST.minusSeconds(60))))
        .hasValueSatisfying(s -> assertThat(s).contains("was harvested only at"));
    assertThat(refusal(new Moved("KB1", "storage", NOW.plusSeconds(3600))))
        .hasValueSatisfying(s -> assertThat(s).contains("must not lie in the future"));
    assertThat(refusal(harvestedAt("KB2", Instant.parse("1889-12-31T23:59:59Z"))))
        .hasValueSatisfying(
            s ->
                assertThat(s)
                    .isEqualTo(
                        "at was '1889-12-31T23:59:59Z' but it must lie between 1970-01-01 and"
                            + " 2199-12-31"));
    assertThat(refusal(new Moved("KB1", " ", day(1))))
        .contains("place was empty but it must name a room or another place");
    assertThat(refusal(new Corrected(1, new Moved("KB1", "storage", day(1)))))
        .hasValueSatisfying(s -> assertThat(s).contains("of the same kind about the same subject"));
  }

  @Test
  void of_fruitsGoneEveryWay_addUp() {
    said(harvested("KB1"));
    said(new Culled("KB1", 3, Cause.ROT, "", day(20)));
    said(new Used("KB1", 5, Purpose.KITCHEN, day(30)));
    said(new Recounted("KB1", 36, day(40)));
    said(new Culled("KB1", 1, Cause.EATEN_FAILING, "", day(41)));

    FruitBudget fruits = Lots.of(journal).find("KB1").orElseThrow().fruits();

    assertThat(fruits).isEqualTo(new FruitBudget(46, 35, 5, 4, 2, Map.of()));
  }

  @Test
  void reservedFruit_isNotOfferedToTheKitchen_andUsedForItsPurpose() {
    said(new Harvested("KB1", "kabocha", "", 6, "porch", HARVEST));
    said(new Reserved("KB1", Purpose.PANEL, 3, day(2)));
    said(new Reserved("KB1", Purpose.SEED, 1, day(2)));

    assertThat(refusal(new Used("KB1", 3, Purpose.KITCHEN, day(3))))
        .contains(
            "count was '3' but of lot KB1 only 2 may go to kitchen: set aside are"
                + " {panel=3, seed=1}");
    assertThat(refusal(new Reserved("KB1", Purpose.SEED, 4, day(3))))
        .hasValueSatisfying(s -> assertThat(s).contains("only 3 may go to seed"));
    said(new Used("KB1", 2, Purpose.PANEL, day(3)));

    FruitBudget fruits = Lots.of(journal).find("KB1").orElseThrow().fruits();
    assertThat(fruits.reserved()).isEqualTo(Map.of(Purpose.PANEL, 1, Purpose.SEED, 1));
    assertThat(fruits.free()).isEqualTo(2);
  }

  @Test
  void withdrawn_isAsIfItHadNeverBeenSaid_andStaysInTheJournal() {
    said(harvested("KB1"));
    long wrong = said(new Moved("KB1", "storage", day(10)));
    said(new Withdrawn("KB1", wrong, day(11)));

    assertThat(Lots.of(journal).find("KB1").orElseThrow().place()).isEqualTo("curing");
    assertThat(journal).hasSize(3);
    assertThat(refusal(new Withdrawn("KB1", wrong, day(11))))
        .contains("entry was '2' but lot KB1 has no such entry that still stands");
    assertThat(refusal(new Withdrawn("KB1", 1, day(11)))).isEmpty();
  }

  @Test
  void withdrawnHarvest_ofALotOfWhichMoreWasSaid_isRefused() {
    long first = said(harvested("KB1"));
    said(new Moved("KB1", "storage", day(10)));

    assertThat(refusal(new Withdrawn("KB1", first, day(11))))
        .hasValueSatisfying(s -> assertThat(s).contains("take that back first"));
  }

  @Test
  void correctedHarvest_mayNotLeaveFewerFruitsThanHaveGone() {
    long first = said(harvested("KB1"));
    said(new Culled("KB1", 10, Cause.ROT, "", day(20)));

    assertThat(
            refusal(
                new Corrected(first, new Harvested("KB1", "kabocha", "", 8, "curing", HARVEST))))
        .contains("count of lot KB1 would fall to -2 but no more fruits can go than came in (8)");
    said(new Corrected(first, new Harvested("KB1", "kabocha", "", 64, "curing", HARVEST)));
    assertThat(Lots.of(journal).find("KB1").orElseThrow().fruits().sound()).isEqualTo(54);
  }

  @Test
  void plannedPlot_lendsItsCodeToOneLot() {
    said(new Planted("K4T", "P7", "kabocha", "Winterglut", false, 6, null, null, 95, HARVEST));

    assertThat(Lots.of(journal).all()).isEmpty();
    assertThat(Lots.of(journal).plans()).containsOnlyKeys("K4T");
    said(harvested("K4T"));
    assertThat(refusal(harvested("K4T")))
        .contains("lot was 'K4T' but a lot of that code exists already");
  }

  @Test
  void fruitGrams_comesFromTheCratesLastWeighed() {
    said(new Harvested("KB1", "kabocha", "", 10, "porch", HARVEST, Grade.RIPE, 15_000, null));
    assertThat(Lots.of(journal).find("KB1").orElseThrow().fruitGrams()).contains(1_500);

    said(new Weighed("KB1", null, 10, 15_600, 1_200, day(30)));
    said(new Weighed("KB1", "tag 1", 1, 1_500, 0, day(40)));

    assertThat(Lots.of(journal).find("KB1").orElseThrow().fruitGrams()).contains(1_440);
  }

  @Test
  void heavierThanLastTime_isKeptWithAWarning() {
    said(harvested("KB1"));
    said(new Weighed("KB1", "tag 1", 1, 1_400, 0, day(10)));
    Lot lot = Lots.of(journal).find("KB1").orElseThrow();

    assertThat(Warning.of(new Weighed("KB1", "tag 1", 1, 1_420, 0, day(20)), lot))
        .hasValueSatisfying(s -> assertThat(s).contains("heavier than last time (1400 g a fruit"));
    assertThat(Warning.of(new Weighed("KB1", "tag 1", 1, 1_380, 0, day(20)), lot)).isEmpty();
    assertThat(Warning.of(new Weighed("KB1", "tag 2", 1, 1_900, 0, day(20)), lot)).isEmpty();
  }

  @Test
  void plannedPlot_takesNotesAndDays_whichTellTheAgeOfItsFruitAtHarvest() {
    said(new Planted("KB1", "P7", "kabocha", "Winterglut", false, 6, null, null, null, day(-120)));
    LocalDate harvest = LocalDate.ofInstant(HARVEST, ZoneOffset.UTC);
    said(new Noted("KB1", "slow after the hail", day(-80)));
    said(new FieldDayNoted("KB1", FieldDay.FRUIT_SET, harvest.minusDays(44), 2, day(-40)));
    assertThat(refusal(new Moved("KB1", "cellar", day(-1))).orElseThrow())
        .isEqualTo("lot was 'KB1' but it is only planned: bring it in first with 'lot add'");

    said(harvested("KB1"));

    Lot lot = Lots.of(journal).find("KB1").orElseThrow();
    assertThat(lot.ripeness())
        .containsExactly(new RipenessNoted("KB1", RipenessSign.TAGGED_SET, 44, 44, 2, HARVEST));
    assertThat(lot.notes()).hasSize(1);
  }

  @Test
  void twoPlacesAtOnce_areRefused() {
    said(harvested("KB1"));
    said(new Moved("KB1", "storage", day(3)));

    assertThat(refusal(new Moved("KB1", "porch", day(3))).orElseThrow())
        .isEqualTo(
            "place was 'porch' but lot KB1 went to storage at that very moment; undo or correct"
                + " that move first");
  }

  @Test
  void offType_isSaidOfTheLot() {
    said(harvested("KB1"));
    assertThat(refusal(new OffTypeNoted("KB1", " ", day(1))).orElseThrow()).contains("say how");
    said(new OffTypeNoted("KB1", "pear-shaped", day(1)));

    assertThat(Lots.of(journal).find("KB1").orElseThrow().offType()).hasSize(1);
  }

  private Optional<String> refusal(Entry entry) {
    return EntryCheck.refusal(entry, journal, GUIDE, NOW);
  }

  private long said(Entry entry) {
    assertThat(refusal(entry)).isEmpty();
    long id = journal.size() + 1L;
    journal.add(new Recorded(id, NOW, "Wren", entry));
    return id;
  }

  private static Harvested harvested(String code) {
    return new Harvested(code, "kabocha", "Winterglut", 46, "curing", HARVEST);
  }

  private static Instant day(int day) {
    return HARVEST.plusSeconds(86_400L * day);
  }
}
