package rindward.controller.variety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.Attested;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.journal.Seeds;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.settings.CropGuideReader;

/** An unripe fruit speaks for itself; doubt about a lot is no failure of its variety. */
class UnripeFruitsTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T00:00:00Z");
  private static final VarietyName NAME = new VarietyName("kabocha", "Winterglut");

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void unripeFruit_setsItsOwnTastesApart_andNoOthers() {
    harvest(20, Grade.RIPE);
    taste("3", Seeds.FLAT, 2, 30);
    taste("4", Seeds.FULL, 8, 31);
    // The same fruit, tasted by somebody else who did not look at its seeds.
    taste("3", null, 3, 30);

    VarietyVerdict verdict = verdict();
    assertThat(verdict.apart()).isEmpty();
    assertThat(verdict.eating().fruits()).isEqualTo(1);
  }

  @Test
  void doubt_isNoFailure_andNoNought() {
    harvest(20, Grade.DOUBTFUL);
    assertThat(verdict().words()).doesNotContain("barely", "too long");
    assertThat(verdict().ripening().answer()).isEqualTo(Ripening.Answer.NOT_KNOWN);
    assertThat(verdict().ripening().reasons()).noneMatch(reason -> reason.contains("0 of 20"));
    assertThat(verdict().ripening().reasons()).anyMatch(reason -> reason.contains("not known"));
    assertThat(verdict().ripening().ripe()).isNull();
  }

  @Test
  void oneFlatSeed_isNeitherUnripeVariety_norAdviceToSowEarlier() {
    harvest(20, Grade.RIPE);
    taste("3", Seeds.FLAT, 2, 30);

    assertThat(verdict().ripening().answer()).isEqualTo(Ripening.Answer.NOT_KNOWN);
    OrderSheet sheet = OrderSheet.of(List.of(verdict()), List.of(verdict()));
    assertThat(sheet.lines().get(0).reason()).doesNotContain("sow it earlier");
  }

  @Test
  void ripeAndUnripe_isInPart_withAnInterval() {
    harvest(20, Grade.RIPE);
    taste("3", Seeds.FLAT, 2, 30);
    taste("4", Seeds.FULL, 8, 31);
    taste("5", Seeds.FULL, 8, 32);

    assertThat(verdict().ripening().answer()).isEqualTo(Ripening.Answer.IN_PART);
    assertThat(verdict().ripening().reasons())
        .contains("2026: 5 to 18 of 20 fruits ripe when picked.")
        .anyMatch(reason -> reason.contains("between 21 and 94 in 100"));
  }

  @Test
  void mostUnripe_setsTheLotApart_andSpeaksForItsVariety() {
    harvest(20, Grade.RIPE);
    for (int fruit = 0; fruit < 4; fruit++) {
      taste("" + fruit, Seeds.FLAT, 2, 30);
    }
    assertThat(verdict().apart()).hasSize(1);
    assertThat(verdict().ripening().answer()).isEqualTo(Ripening.Answer.BARELY);
  }

  @Test
  void vinesThatDiedEarly_setTheLotApart() {
    harvest(20, Grade.RIPE);
    say(new RipenessNoted("K4T", RipenessSign.VINES_DEAD, 15, 80, 0, HARVEST));
    assertThat(verdict().apart()).hasSize(1);
  }

  private VarietyVerdict verdict() {
    Instant now = HARVEST.plus(Duration.ofDays(60));
    return JudgedLots.of(
            CropGuideReader.builtIn(),
            300_000,
            place -> (from, to, visit) -> {},
            JournalView.of(journal),
            now)
        .variety(NAME, now);
  }

  private void harvest(int count, Grade grade) {
    say(new Harvested("K4T", "kabocha", "Winterglut", count, "porch", HARVEST, grade, null, null));
    say(new Attested("K4T", "stem dry", HARVEST.plus(Duration.ofDays(10))));
  }

  private void taste(String fruit, @Nullable Seeds seeds, int liking, int day) {
    say(
        new KitchenTasted(
            "K4T",
            fruit,
            CutFruit.of(seeds),
            liking,
            null,
            List.of(),
            "",
            HARVEST.plus(Duration.ofDays(day))));
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }
}
