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
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.readiness.Ripeness;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;

/** What a verdict rests on is fruits that were cut; each once, whoever tasted it, and how often. */
class FruitsCountedTest {
  private static final Instant HARVEST = Instant.parse("2026-09-20T08:00:00Z");
  private static final VarietyName NAME = new VarietyName("kabocha", "Winterglut");

  private final List<Recorded> journal = new ArrayList<>();

  FruitsCountedTest() {
    say(
        new Harvested(
            "K4T", "kabocha", "Winterglut", 20, "porch", HARVEST, Grade.RIPE, null, null));
    say(new Attested("K4T", "stem dry", at(10, 8)));
  }

  @Test
  void twoSessionsPlannedWithTheSameFruits_andNothingCooked_restOnNoFruit() {
    session("one", 30, List.of());
    session("two", 31, List.of());
    assertThat(verdict().eating().fruits()).isZero();
    assertThat(verdict().eating().words()).isEqualTo("eating not judged");
  }

  @Test
  void sameFruitInTwoSessions_isOneFruit() {
    session("one", 30, List.of("1"));
    session("two", 31, List.of("1"));
    assertThat(verdict().eating().fruits()).isEqualTo(1);
    assertThat(verdict().eating().sessions()).isEqualTo(2);
  }

  @Test
  void sixPeopleTastingOneFruitWithoutATag_areOneFruit_andAnotherDayIsAnother() {
    for (int person = 0; person < 6; person++) {
      taste(null, null, at(30, 12 + person));
    }
    assertThat(verdict().eating().fruits()).isEqualTo(1);
    taste(null, null, at(31, 18));
    assertThat(verdict().eating().fruits()).isEqualTo(2);
  }

  @Test
  void threePeopleNotingFlatSeedsOfOneFruit_haveCutOne() {
    for (int person = 0; person < 3; person++) {
      taste("7", Seeds.FLAT, at(30, 12 + person));
    }
    taste(null, Seeds.FLAT, at(30, 18));
    assertThat(ripeness().share().orElseThrow().cut()).isEqualTo(1);
  }

  @Test
  void whereTwoDisagreeAboutTheSeedsOfOneFruit_itIsNotCalledRipe() {
    taste("7", Seeds.FULL, at(30, 12));
    taste("7", Seeds.FLAT, at(30, 13));
    assertThat(ripeness().share().orElseThrow().cut()).isEqualTo(1);
    assertThat(ripeness().share().orElseThrow().ripe()).isZero();
  }

  @Test
  void tasteWithoutATag_isOfTheFruitThatWasCutLastThatDay() {
    taste("7", Seeds.FULL, at(30, 12));
    taste(null, null, at(30, 13));
    assertThat(verdict().eating().fruits()).isEqualTo(1);
  }

  private void session(String name, int day, List<String> cooked) {
    Instant at = at(day, 18);
    SessionPlanned planned =
        new SessionPlanned(
            name,
            List.of(
                new Served("a", "K4T", List.of("1", "2", "3")),
                new Served("b", "K4T", List.of("1", "2", "3"))),
            List.of("Wren"),
            null,
            null,
            null,
            6,
            Blinding.FULL,
            new Preparation("baked", 190, "", "", 50, ""),
            7,
            at);
    say(planned);
    for (String fruit : cooked) {
      say(new SampleCooked(name, "a", "K4T", fruit, null, CutFruit.of(Seeds.FULL), null, "", at));
      say(new SampleCooked(name, "b", "K4T", fruit, null, CutFruit.of(Seeds.FULL), null, "", at));
    }
    for (Cup cup : SessionPlan.draw(planned.request(), 7).sheets().get(0).cups()) {
      say(new Scored(name, "Wren", cup.code(), Attribute.LIKING, 9, at));
    }
    say(new SessionClosed(name, false, at));
  }

  private Ripeness ripeness() {
    return Ripeness.of(
        JournalView.of(journal).lots().find("K4T").orElseThrow(),
        CropGuideReader.builtIn().crop("kabocha").orElseThrow());
  }

  private VarietyVerdict verdict() {
    Instant now = at(60, 8);
    return JudgedLots.of(
            CropGuideReader.builtIn(),
            300_000,
            place -> (from, to, visit) -> {},
            JournalView.of(journal),
            now)
        .variety(NAME, now);
  }

  private void taste(@Nullable String fruit, @Nullable Seeds seeds, Instant at) {
    say(new KitchenTasted("K4T", fruit, CutFruit.of(seeds), 8, null, List.of(), "", at));
  }

  private void say(Entry entry) {
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
  }

  private static Instant at(int day, int hour) {
    return HARVEST.plus(Duration.ofDays(day)).plus(Duration.ofHours(hour - 8L));
  }
}
