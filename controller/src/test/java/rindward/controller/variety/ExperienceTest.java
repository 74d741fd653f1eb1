package rindward.controller.variety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Days;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Used;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.readiness.State;
import rindward.controller.readiness.Verdict;
import rindward.controller.settings.CropGuideReader;

/** What last year's fruits teach about this year's. Nothing is measured: days of life are days. */
class ExperienceTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();
  private static final Instant LAST_YEAR = Instant.parse("2025-09-20T00:00:00Z");
  private static final Instant THIS_YEAR = Instant.parse("2026-09-20T00:00:00Z");
  private static final int HOLD_MILLIS = 300_000;

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void life_halfLostAtHome_overridesTheGuide_andBothAreShown() {
    harvest("K4T", 20, LAST_YEAR);
    lose("K4T", 8, LAST_YEAR, 40);
    lose("K4T", 7, LAST_YEAR, 60);
    use("K4T", 5, LAST_YEAR, 200);
    harvest("K7A", 12, THIS_YEAR);

    Verdict verdict = verdict("K7A", THIS_YEAR, 52);
    assertThat(verdict.yardstick().sentences().get(0))
        .contains(
            "by the guide; 40 to 60 by what you saw, which counts"
                + " (32 fruits of your own, 15 lost: a quarter by day 40, half-life 60 days).");
    assertThat(verdict.state()).isEqualTo(State.EAT_FIRST);
    assertThat(verdict.reasons())
        .contains("It has spent 52 days of a life of 40 to 60 (by your own fruits).");
  }

  @Test
  void life_fewLost_isToldAndNotUsed() {
    harvest("K4T", 6, LAST_YEAR);
    lose("K4T", 2, LAST_YEAR, 20);
    use("K4T", 4, LAST_YEAR, 30);
    harvest("K7A", 1, THIS_YEAR);

    Verdict verdict = verdict("K7A", THIS_YEAR, 52);
    assertThat(verdict.yardstick().life()).isEqualTo(guideLife());
    assertThat(verdict.yardstick().sentences().get(0))
        .contains("too little was seen to set against it (7 fruits of your own, 2 lost,");
    assertThat(verdict.state()).isNotEqualTo(State.EAT_FIRST);
  }

  @Test
  void life_soundBeyondTheGuide_isAtLeastAsLongAsWasWatched() {
    int longer = guideLife().high() + 60;
    harvest("K4T", 12, LAST_YEAR);
    use("K4T", 12, LAST_YEAR, longer);
    harvest("K7A", 12, THIS_YEAR);

    Verdict verdict = verdict("K7A", THIS_YEAR, 20);
    assertThat(verdict.yardstick().life().low()).isEqualTo(longer);
    assertThat(verdict.yardstick().sentences().get(0))
        .contains("at least " + longer + " by what you saw");
  }

  /** Nobody watched longer than that: an older one is older than anything known, and no more. */
  @Test
  void life_thatNobodyWatchedToItsEnd_isNeverSpent() {
    int longer = guideLife().high() + 60;
    harvest("K4T", 12, LAST_YEAR);
    use("K4T", 12, LAST_YEAR, longer);
    harvest("K7A", 2, THIS_YEAR);

    State before = verdict("K7A", THIS_YEAR, longer).state();
    for (int day = longer; day < longer + 30; day++) {
      Verdict verdict = verdict("K7A", THIS_YEAR, day);
      assertThat(verdict.state()).as("day " + day).isEqualTo(before);
      assertThat(verdict.reasons()).noneMatch(reason -> reason.contains("spent"));
      assertThat(verdict.expected().map(e -> e.what()))
          .isNotEqualTo(Optional.of("at the end of its life"));
    }
    assertThat(verdict("K7A", THIS_YEAR, longer + 1).reasons())
        .contains(
            "No fruit of its variety was watched for longer than " + longer + " days of life.");
  }

  @Test
  void life_ofALotThatWasEatenUp_endsThere() {
    harvest("K4T", 4, LAST_YEAR);
    use("K4T", 4, LAST_YEAR, 30);

    assertThat(grown("K4T", LAST_YEAR.plusSeconds(300 * 86_400L)).lived().elapsedMillis())
        .isEqualTo(30 * 86_400_000L);
  }

  @Test
  void window_tastedAtThreeAges_setsTheBestTime() {
    harvest("K4T", 20, LAST_YEAR);
    for (int i = 0; i < 4; i++) {
      taste("K4T", 5, LAST_YEAR, 20);
      taste("K4T", 8, LAST_YEAR, 90);
      taste("K4T", 5, LAST_YEAR, 160);
    }
    harvest("K7A", 12, THIS_YEAR);

    assertThat(verdict("K7A", THIS_YEAR, 50).state()).isEqualTo(State.RESTING);
    Verdict best = verdict("K7A", THIS_YEAR, 85);
    assertThat(best.phase()).contains("at its best");
    assertThat(best.yardstick().sentences())
        .anyMatch(s -> s.startsWith("By the guide: "))
        .anyMatch(s -> s.contains("by 12 tastes. This counts, not the guide."));
  }

  @Test
  void window_fewTastes_leavesTheGuideStanding() {
    harvest("K4T", 20, LAST_YEAR);
    taste("K4T", 5, LAST_YEAR, 20);
    taste("K4T", 8, LAST_YEAR, 90);
    harvest("K7A", 12, THIS_YEAR);

    Verdict verdict = verdict("K7A", THIS_YEAR, 50);
    assertThat(verdict.yardstick().sentences())
        .anyMatch(s -> s.endsWith("too few to go by instead of the guide."));
    assertThat(verdict.reasons()).noneMatch(s -> s.contains("your own tastes"));
  }

  private static Days guideLife() {
    return GUIDE.crop("kabocha").orElseThrow().keeping().life().value();
  }

  private Verdict verdict(String code, Instant harvested, int day) {
    Instant now = harvested.plusSeconds(day * 86_400L);
    List<Grown> lots = Lots.of(journal).all().stream().map(lot -> grown(lot.code(), now)).toList();
    Grown asked = lots.stream().filter(g -> g.lot().code().equals(code)).findFirst().orElseThrow();
    return Experience.of(lots, Map.of()).judge(asked, now).verdict();
  }

  private Grown grown(String code, Instant now) {
    Lot lot = Lots.of(journal).find(code).orElseThrow();
    Crop crop = GUIDE.crop(lot.crop()).orElseThrow();
    List<Exposure> life =
        Exposure.of(lot, Accuracies.of(journal), place -> (from, to, visit) -> {}, now);
    LotAccount account = LotAccount.of(life, crop, HOLD_MILLIS);
    return new Grown(
        lot,
        crop,
        LotExposure.of(lot, crop, life, account, (from, to, visit) -> {}, HOLD_MILLIS, now));
  }

  private void harvest(String code, int count, Instant at) {
    say(new Harvested(code, "kabocha", "Winterglut", count, "porch", at, Grade.RIPE, null, null));
    say(new Attested(code, "stem dry", at));
  }

  private void lose(String code, int count, Instant harvested, int day) {
    say(new Culled(code, count, Cause.ROT, "", harvested.plusSeconds(day * 86_400L)));
  }

  private void use(String code, int count, Instant harvested, int day) {
    say(new Used(code, count, Purpose.KITCHEN, harvested.plusSeconds(day * 86_400L)));
  }

  private void taste(String code, int liking, Instant harvested, int day) {
    say(
        new KitchenTasted(
            code,
            null,
            CutFruit.of(null),
            liking,
            null,
            List.of(),
            "",
            harvested.plusSeconds(day * 86_400L)));
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }
}
