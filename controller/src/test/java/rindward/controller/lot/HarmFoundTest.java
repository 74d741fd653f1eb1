package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Harm;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.HarmLifted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Withdrawn;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.SessionPlan;

/** How long a finding of harm stands, and who ends it. */
class HarmFoundTest {
  private static final Instant NOON = Instant.parse("2026-12-03T12:00:00Z");
  private static final Preparation BAKED = new Preparation("baked", null, "", "", null, "");

  private final List<Recorded> journal = new ArrayList<>();

  HarmFoundTest() {
    said(0, "Wren", new Harvested("K4T", "kabocha", "", 9, "porch", NOON.minusSeconds(86_400)));
    said(0, "Wren", new Harvested("B1", "kabocha", "", 9, "porch", NOON.minusSeconds(86_400)));
  }

  @Test
  void tapOfATaster_namesTheFruitThatWasInTheCup() {
    SessionPlanned plan = planned();
    said(0, "Ash", bitter(plan, 1, 0));

    assertThat(harms())
        .singleElement()
        .satisfies(
            harm -> {
              assertThat(harm.fruit()).isEqualTo("tag 7");
              assertThat(harm.sentence()).isEqualTo("Fruit tag 7 was bitter, said in session one.");
            });
    assertThat(Lots.of(journal).find("B1").orElseThrow().harms()).isEmpty();
  }

  @Test
  void mistakenTap_isTakenBackWithinAMinute_andNotLater() {
    SessionPlanned plan = planned();
    said(0, "Ash", bitter(plan, 1, 0));
    said(50, "Ash", bitter(plan, 0, 50));
    assertThat(harms()).isEmpty();

    said(60, "Ash", bitter(plan, 1, 60));
    said(121, "Ash", bitter(plan, 0, 121));
    assertThat(harms()).hasSize(1);
  }

  /** The phone was in a pocket without a network: what counts is when it was tapped. */
  @Test
  void tapsThatComeADayLateTogether_countAsTheyWereTapped() {
    SessionPlanned plan = planned();
    said(86_400, "Ash", bitter(plan, 1, 0));
    said(86_400, "Ash", bitter(plan, 0, 1_200));
    assertThat(harms()).hasSize(1);

    journal.removeIf(r -> r.entry() instanceof Scored);
    said(86_400, "Ash", bitter(plan, 1, 0));
    said(86_400, "Ash", bitter(plan, 0, 30));
    assertThat(harms()).isEmpty();
  }

  @Test
  void closingTheSession_changesNothing() {
    SessionPlanned plan = planned();
    said(0, "Ash", bitter(plan, 1, 0));
    said(10, "Wren", new SessionClosed("one", false, NOON.plusSeconds(10)));

    assertThat(harms()).hasSize(1);
  }

  @Test
  void tasteThatIsWithdrawnOrCorrectedLater_orBySomebodyElse_leavesItsFindingBehind() {
    long taste = said(0, "Ash", taste(Harm.BITTER));
    said(30, "Rowan", new Withdrawn("K4T", taste, NOON.plusSeconds(30)));
    assertThat(harms()).hasSize(1);

    long other = said(40, "Ash", taste(Harm.MOULD));
    said(140, "Ash", new Corrected(other, taste(null)));
    assertThat(harms()).extracting(HarmFound::harm).containsExactly(Harm.BITTER, Harm.MOULD);
  }

  @Test
  void tasteWithdrawnWithinAMinuteByWhoSaidIt_leavesNothing() {
    long taste = said(0, "Ash", taste(Harm.BITTER));
    said(59, "Ash", new Withdrawn("K4T", taste, NOON.plusSeconds(59)));

    assertThat(harms()).isEmpty();
  }

  @Test
  void liftingCountsForWhatWasSaidBefore_andNotForACorrectionSince() {
    long taste = said(0, "Ash", taste(null));
    said(100, "Ash", taste(Harm.BITTER));
    long lift = said(200, "Wren", new HarmLifted("K4T", "a gourd", NOON.plusSeconds(200)));
    assertThat(harms()).isEmpty();

    said(300, "Ash", new Corrected(taste, taste(Harm.BITTER)));
    assertThat(harms()).hasSize(1);

    said(400, "Wren", new Withdrawn("K4T", lift, NOON.plusSeconds(400)));
    assertThat(harms()).hasSize(2);
  }

  private List<HarmFound> harms() {
    return Lots.of(journal).find("K4T").orElseThrow().harms();
  }

  private static KitchenTasted taste(Harm harm) {
    List<Harm> found = harm == null ? List.of() : List.of(harm);
    CutFruit cut = new CutFruit(null, null, "", false, false, null, null, found);
    return new KitchenTasted("K4T", "tag 4", cut, 6, null, List.of(), "", NOON);
  }

  private SessionPlanned planned() {
    SessionPlanned plan =
        new SessionPlanned(
            "one",
            List.of(
                new Served("K4T", "K4T", List.of("tag 7")), new Served("B1", "B1", List.of("1"))),
            List.of("Ash", "Rowan"),
            null,
            null,
            null,
            6,
            Blinding.FULL,
            BAKED,
            7,
            NOON.minusSeconds(60));
    said(-60, "Wren", plan);
    return plan;
  }

  private static Scored bitter(SessionPlanned plan, int value, long second) {
    String code =
        SessionPlan.draw(plan.request(), plan.seed()).sheets().get(0).cups().stream()
            .filter(cup -> cup.sample().equals("K4T"))
            .findFirst()
            .orElseThrow()
            .code();
    return new Scored("one", "Ash", code, Attribute.BITTER, value, NOON.plusSeconds(second));
  }

  private long said(long second, String by, Entry entry) {
    long id = journal.size() + 1L;
    journal.add(new Recorded(id, NOON.plusSeconds(second), by, entry));
    return id;
  }
}
