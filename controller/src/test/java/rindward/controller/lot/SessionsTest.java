package rindward.controller.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Decision;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.UsesTicked;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;

/** A session as the journal tells it: drawn again from its seed, opened only when it is closed. */
class SessionsTest {
  private static final Instant AT = Instant.parse("2026-12-03T18:00:00Z");
  private static final CropGuide CROPS = CropGuideReader.builtIn();

  /** What the first version drew. Other values mean that old sessions can no longer be read. */
  private static final String[] CODES = {"409", "394", "603"};

  private static final String[] ORDER = {"R7A", "A3A", "K4T"};

  private final List<Recorded> journal = new ArrayList<>();

  @Test
  void planned_isDrawnAgainFromItsSeed_theSameForAllYears() {
    say(planned("one", 7, served("K4T"), served("R7A"), served("A3A")));

    Session session = session("one");

    assertThat(session.plan().sheets().get(0).codes()).containsExactly(CODES);
    assertThat(session.plan().sheets().get(0).cups())
        .extracting(Cup::sample)
        .containsExactly(ORDER);
  }

  @Test
  void scores_areTakenOfOwnCupsOnly_andOnTheirScale() {
    say(planned("one", 7, served("K4T"), served("R7A")));
    String code = code(0, "K4T");

    assertThat(refusal(score("Wren", code, 8))).isEmpty();
    assertThat(refusal(score("Wren", code, 10)))
        .contains("liking was '10' but it must be 1 (dislike extremely) to 9 (like extremely)");
    assertThat(refusal(score("Heron", code, 8)).orElseThrow()).contains("one of [Wren, Ash]");
    assertThat(refusal(score("Ash", code, 8)).orElseThrow()).contains("the cups of Ash");
    assertThat(refusal(new Scored("two", "Wren", code, Attribute.LIKING, 8, AT)))
        .contains("session was 'two' but no session of that name is planned");
  }

  @Test
  void result_isEmpty_untilTheSessionIsClosed_andThenNothingIsScored() {
    say(planned("one", 7, served("K4T"), served("R7A")));
    assertThat(refusal(new SessionClosed("one", false, AT)).orElseThrow())
        .contains("nobody has scored");
    say(score("Wren", code(0, "K4T"), 8));
    say(score("Wren", code(0, "R7A"), 5));
    assertThat(session("one").result()).isEmpty();

    say(new SessionClosed("one", true, AT));

    assertThat(session("one").result()).isPresent();
    assertThat(refusal(score("Wren", code(0, "K4T"), 7)).orElseThrow()).contains("was closed at");
  }

  @Test
  void plan_thatCannotBeDrawn_isRefused() {
    assertThat(refusal(planned("one", 7, served("K4T"))).orElseThrow()).contains("at least two");
    assertThat(refusal(planned("one", 7, new Served("K4T", "K4T", List.of()), served("R7A"))))
        .contains("fruits of K4T was '[]' but they must be one to three");
    say(planned("one", 7, served("K4T"), served("R7A")));
    assertThat(refusal(planned("one", 8, served("K4T"), served("R7A"))).orElseThrow())
        .contains("planned already");
  }

  @Test
  void cookedAndTastedFruits_tellOfTheirLot() {
    say(new Harvested("K4T", "kabocha", "", 9, "porch", AT));
    say(planned("one", 7, served("K4T"), served("R7A")));
    say(new SampleCooked("one", "K4T", "K4T", "1", 900, CutFruit.of(Seeds.FLAT), 40, "", AT));
    say(new KitchenTasted("K4T", "2", CutFruit.of(Seeds.FLAT), 3, null, List.of(), "watery", AT));

    Lot lot = Lots.of(journal).find("K4T").orElseThrow();

    assertThat(lot.ripeness()).extracting(RipenessNoted::fruits).containsExactly(1, 2);
    assertThat(lot.tastes()).hasSize(1);
    assertThat(
            refusal(
                new SampleCooked("one", "K4T", "R7A", "1", 900, CutFruit.of(null), null, "", AT)))
        .contains("lot was 'R7A' but the sample comes from K4T");
  }

  @Test
  void sessionIsNotClosed_untilItIsSaidWhichFruitsWereCooked_orThatNobodyKnows() {
    say(new Harvested("K4T", "kabocha", "", 9, "porch", AT));
    say(planned("one", 7, served("K4T"), served("R7A")));
    say(score("Wren", code(0, "K4T"), 8));
    assertThat(refusal(new SessionClosed("one", false, AT)).orElseThrow())
        .contains("nobody said which fruits were cooked for K4T:")
        .doesNotContain("R7A");
    assertThat(refusal(new SessionClosed("one", true, AT))).isEmpty();

    List<Entry> planned = new Cooking(Lots.of(journal)).asPlanned(session("one"), AT);
    assertThat(planned).hasSize(2);
    say(planned.get(0));
    assertThat(refusal(new SessionClosed("one", false, AT))).isEmpty();
    assertThat(session("one").fruitsOf("K4T")).containsExactly("1");
  }

  @Test
  void aFruitLeavesItsLotOnce_howeverManySessionsItIsCookedFor() {
    say(new Harvested("K4T", "kabocha", "", 9, "porch", AT));
    say(planned("one", 7, served("K4T"), served("R7A")));
    say(planned("two", 7, served("K4T"), served("R7A")));
    SampleCooked first =
        new SampleCooked("one", "K4T", "K4T", "1", 900, CutFruit.of(null), 40, "", AT);
    new Cooking(Lots.of(journal)).of(first).forEach(this::say);
    new Cooking(Lots.of(journal))
        .of(new SampleCooked("two", "K4T", "K4T", "1", 900, CutFruit.of(null), 40, "", AT))
        .forEach(this::say);
    Lot lot = Lots.of(journal).find("K4T").orElseThrow();
    assertThat(lot.fruits().sound()).isEqualTo(8);
    assertThat(lot.picked().all()).hasSize(1);
  }

  @Test
  void whatWasSaidOfASession_isTakenBack_thePlanLast_andNothingOnceItIsClosed() {
    say(planned("one", 7, served("K4T"), served("R7A")));
    say(score("Wren", code(0, "K4T"), 8));
    assertThat(refusal(new TakenBack("one", 1, AT)).orElseThrow()).contains("take that back first");

    say(new TakenBack("one", 2, AT));
    assertThat(session("one").scored()).isEmpty();
    say(new TakenBack("one", 1, AT));
    assertThat(Sessions.of(journal).find("one")).isEmpty();

    say(planned("one", 8, served("K4T"), served("R7A")));
    say(score("Wren", code(0, "K4T"), 8));
    say(new SessionClosed("one", true, AT));
    assertThat(refusal(new TakenBack("one", 6, AT)).orElseThrow()).contains("it is closed");
  }

  @Test
  void usesOfACup_areCountedByTasters_onceTheSessionIsClosed() {
    say(planned("one", 7, served("K4T"), served("R7A")));
    say(score("Wren", code(0, "K4T"), 8));
    say(new UsesTicked("one", "Wren", code(0, "K4T"), List.of(Use.SOUP), AT));
    say(new UsesTicked("one", "Wren", code(0, "K4T"), List.of(Use.PIE, Use.PIE), AT));
    say(new UsesTicked("one", "Ash", code(1, "K4T"), List.of(Use.PIE), AT));
    assertThat(session("one").goodFor("K4T")).isEmpty();
    assertThat(refusal(new UsesTicked("one", "Ash", code(0, "K4T"), List.of(Use.PIE), AT)))
        .hasValueSatisfying(s -> assertThat(s).contains("one of the cups of Ash"));

    say(new SessionClosed("one", true, AT));

    assertThat(session("one").goodFor("K4T")).containsExactly(Map.entry(Use.PIE, 2));
  }

  @Test
  void kitchenTaste_thatSaysNothing_isRefused() {
    say(new Harvested("K4T", "kabocha", "", 9, "porch", AT));

    assertThat(refusal(taste(null, ""))).hasValueSatisfying(s -> assertThat(s).contains("empty"));
    assertThat(refusal(taste(12, "")).orElseThrow()).startsWith("liking was '12'");
    assertThat(refusal(taste(null, "like chestnuts"))).isEmpty();
  }

  @Test
  void decision_toTryAgain_mustSayHow() {
    assertThat(refusal(new VarietyDecided("kabocha", "Frostgate", Decision.TRY_AGAIN, "", AT)))
        .contains("reason was empty but say how it is to be tried again");
    assertThat(refusal(new VarietyDecided("kabocha", "Frostgate", Decision.DROP, "", AT)))
        .isEmpty();
  }

  private static KitchenTasted taste(Integer liking, String word) {
    return new KitchenTasted("K4T", null, CutFruit.of(null), liking, null, List.of(), word, AT);
  }

  private static Served served(String lot) {
    return new Served(lot, lot, List.of("1"));
  }

  private static SessionPlanned planned(String name, long seed, Served... samples) {
    return new SessionPlanned(
        name,
        List.of(samples),
        List.of("Wren", "Ash"),
        null,
        null,
        null,
        6,
        Blinding.FULL,
        new Preparation("baked", 190, "cubes", "soft", 50, "middle"),
        seed,
        AT);
  }

  private static Scored score(String panelist, String code, int liking) {
    return new Scored("one", panelist, code, Attribute.LIKING, liking, AT);
  }

  private String code(int panelist, String sample) {
    return session("one").plan().sheets().get(panelist).cups().stream()
        .filter(cup -> cup.sample().equals(sample))
        .map(Cup::code)
        .findFirst()
        .orElseThrow();
  }

  private Session session(String name) {
    return Sessions.of(journal).find(name).orElseThrow();
  }

  private Optional<String> refusal(Entry entry) {
    return EntryCheck.refusal(entry, journal, CROPS, AT);
  }

  private void say(Entry entry) {
    assertThat(refusal(entry)).isEmpty();
    journal.add(new Recorded(journal.size() + 1L, AT, "Wren", entry));
  }
}
