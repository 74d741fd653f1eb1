package rindward.controller.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.Attested;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;
import rindward.controller.lot.Lot;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.variety.CupWorth;
import rindward.controller.variety.CupWorth.Says;
import rindward.controller.variety.TasteApart;

/** What is said of a lot's cups before it is chosen, of its tastes after, and what to cook next. */
class SecondFruitTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T00:00:00Z");
  private static final Instant NOW = HARVEST.plus(Duration.ofDays(60));

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void unripeFruit_asksForASecondOne_besideOneOfTheSameVariety() {
    ripe("K4T", "kabocha", "Winterglut");
    ripe("A1", "acorn", "Green Pleat");
    ripe("B1", "buttercup", "Old Thimble");
    ripe("K7A", "kabocha", "Winterglut");
    taste("K4T", "1", Seeds.FLAT);

    SecondFruit second = second("K4T").orElseThrow();
    assertThat(second.sentence())
        .isEqualTo(
            "A fruit of K4T was not ripe. Cook a second one beside one of K7A, the same way.");
    assertThat(second.samples())
        .containsExactly(
            new Served("K4T:2", "K4T", List.of("2")), new Served("K7A:1", "K7A", List.of("1")));
    assertThat(second.ifRipe())
        .contains("it was that fruit rather than the lot", "Of 2 fruits cut, 1 was ripe")
        .contains("between 9 and 91 in 100");
    assertThat(second.ifUnripe())
        .contains("it was not the cooking", "Of 2 fruits cut, none was ripe")
        .contains("After 2 more such fruits the lot is set apart.");
    assertThat(second("K7A")).isEmpty();
  }

  @Test
  void nothingIsProposed_whereItWouldTellNothing() {
    ripe("K4T", "kabocha", "Winterglut");
    taste("K4T", "1", Seeds.FLAT);
    assertThat(second("K4T")).as("no other lot").isEmpty();

    ripe("K7A", "kabocha", "Winterglut");
    assertThat(second("K4T")).isPresent();
    for (int fruit = 2; fruit < 5; fruit++) {
      taste("K4T", "" + fruit, Seeds.FLAT);
    }
    assertThat(second("K4T")).as("most of it is unripe: it is known").isEmpty();
  }

  @Test
  void cups_areJudgedBeforeTheyAreChosen() {
    ripe("K4T", "kabocha", "Winterglut");
    say(harvested("K5", "kabocha", "curing", Grade.RIPE));
    ripe("K6", "kabocha", "Winterglut");
    say(new FrostNoted("K6", -900, 30, true, true, HARVEST));
    say(harvested("K7", "kabocha", "porch", Grade.DOUBTFUL));
    say(new Attested("K7", "stem dry", HARVEST.plus(Duration.ofDays(10))));

    assertThat(worth("K4T")).isEqualTo(new CupWorth(Says.MUCH, "Cured, as told."));
    assertThat(worth("K5", HARVEST.plus(Duration.ofDays(5))))
        .isEqualTo(
            new CupWorth(Says.NOTHING, "50 % cured: its taste will say nothing of the variety."));
    assertThat(worth("K6"))
        .isEqualTo(
            new CupWorth(Says.NOTHING, "Hurt by cold: its taste will say nothing of the variety."));
    assertThat(worth("K7")).isEqualTo(new CupWorth(Says.UNSURE, "Never cut: ripeness unknown."));
  }

  @Test
  void everyTaste_isTold_withWhyItDoesNotCount() {
    ripe("K4T", "kabocha", "Winterglut");
    taste("K4T", "1", Seeds.FLAT);
    taste("K4T", "2", Seeds.FULL);
    TasteApart apart = new TasteApart(judged(NOW).grown(lot("K4T")).orElseThrow());
    assertThat(lot("K4T").tastes().stream().map(apart::why))
        .containsExactly(Optional.of("that fruit was not ripe"), Optional.empty());
  }

  private CupWorth worth(String code) {
    return worth(code, NOW);
  }

  private CupWorth worth(String code, Instant now) {
    return CupWorth.of(judged(now).grown(lot(code)).orElseThrow());
  }

  private Optional<SecondFruit> second(String code) {
    return SecondFruit.of(lot(code), judged(NOW));
  }

  private Lot lot(String code) {
    return JournalView.of(journal).lots().find(code).orElseThrow();
  }

  private JudgedLots judged(Instant now) {
    int[] warm = new int[24 * 100];
    int[] damp = new int[24 * 100];
    Arrays.fill(warm, 28_000);
    Arrays.fill(damp, 76_000);
    Run run = new Run(HARVEST.toEpochMilli(), 3_600_000, warm.length, warm, damp);
    History curing = (from, to, visit) -> visit.accept(run);
    return JudgedLots.of(
        CropGuideReader.builtIn(),
        3_600_000,
        place -> place.equals("curing") ? curing : (from, to, visit) -> {},
        JournalView.of(journal),
        now);
  }

  private void ripe(String code, String crop, String variety) {
    say(new Harvested(code, crop, variety, 20, "porch", HARVEST, Grade.RIPE, null, null));
    say(new Attested(code, "stem dry", HARVEST.plus(Duration.ofDays(10))));
  }

  private static Harvested harvested(String code, String crop, String place, Grade grade) {
    return new Harvested(code, crop, "Winterglut", 20, place, HARVEST, grade, null, null);
  }

  private void taste(String code, String fruit, Seeds seeds) {
    say(
        new KitchenTasted(
            code,
            fruit,
            CutFruit.of(seeds),
            3,
            null,
            List.of(),
            "",
            HARVEST.plus(Duration.ofDays(30))));
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }
}
