package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.analysis.Conclusion.Kind;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sample;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.SessionRequest;

/** From the cups to the sentences: what a session says once its codes are opened. */
class ClosedSessionTest {

  @Test
  void threeTastersOfSevenSamples_sayWhatTheyCanAndNoMore() {
    SessionPlan plan = plan(7, 3, Optional.empty());
    FlightResult result =
        close(plan, "8 8 7 6 6 5 3; 7 8 6 7 5 6 4; 8 7 7 5 6 4 3").results(Attribute.LIKING).get(0);
    assertThat(result.test().orElseThrow().rankSums())
        .containsExactly(19.0, 19.0, 14.0, 12.0, 9.5, 7.5, 3.0);
    assertThat(sentence(result, Kind.DIFFERENCE))
        .isEqualTo("A and B are liked better than G. Between any two others it may be chance.");
    assertThat(result.proofs())
        .containsExactly(
            "Exact p 0.000736: 2338 of 3,175,200 arrangements of the mid-ranks, one panelist held.",
            "Friedman 1937, ties allowed for; pairs by Newell and MacFarlane 1987.",
            "The tasters agreed strongly (Kendall's W "
                + String.format(
                    Locale.ROOT, "%.2f", result.test().orElseThrow().agreement().orElseThrow())
                + ").");
    assertThat(String.join(" ", result.words())).doesNotContain("p 0", "W ", "arrangements");
    assertThat(sentence(result, Kind.EARLY_IMPRESSION))
        .isEqualTo("One fruit each: early impression.");
    assertThat(result.means().get(0).mean()).isCloseTo(23 / 3.0, within(1e-12));
  }

  @Test
  void oneTaster_isNotTested() {
    FlightResult result =
        close(plan(3, 1, Optional.empty()), "6 8 5").results(Attribute.LIKING).get(0);
    assertThat(result.test()).isEmpty();
    assertThat(sentence(result, Kind.NO_TEST))
        .isEqualTo(
            "One taster, so nothing can be tested; taster 1 gave, from the highest: B 8, A 6, C"
                + " 5.");
    assertThat(result.means().get(0).interval()).isEmpty();
  }

  @Test
  void tastersWhoDisagree_tellNothingApart() {
    FlightResult result =
        close(plan(3, 3, Optional.empty()), "6 7 8; 7 8 6; 8 6 7").results(Attribute.LIKING).get(0);
    assertThat(result.groups()).isEmpty();
    assertThat(sentence(result, Kind.NO_DIFFERENCE)).startsWith("No sample stands out");
    assertThat(sentence(result, Kind.CHANCE)).startsWith("Exact p 1");
    assertThat(sentence(result, Kind.AGREEMENT)).contains("hardly agreed (Kendall's W 0.00)");
  }

  @Test
  void hiddenDuplicate_showsWhoIsUnsteady() {
    SessionPlan plan = plan(3, 2, Optional.of("A"));
    List<Score> scores = scores(plan, "6 7 8; 6 7 8");
    scores.addAll(duplicates(plan, 6, 2));
    FlightResult result =
        new ClosedSession(plan, scores, sample -> 1).results(Attribute.LIKING).get(0);
    assertThat(sentence(result, Kind.REPEATABILITY))
        .isEqualTo(
            "Served the same sample twice, scores differed: taster 1 by 0, taster 2 by 4"
                + " (unsteady).");
    assertThat(result.table().scores()).containsExactly(List.of(6, 7, 8), List.of(6, 7, 8));
  }

  @Test
  void threeTastersWhoEachMissedACup_loseNothingButThatCup() {
    SessionPlan plan = plan(5, 6, Optional.empty());
    List<Score> scores =
        scores(plan, "8 7 6 5 3; 8 7 6 5 3; 8 7 6 5 3; 9 7 5 4 3; 8 7 5 4 2; 7 6 5 4 3");
    List<Score> missed =
        List.of(score(plan, 0, "A", 8), score(plan, 1, "C", 6), score(plan, 2, "E", 3));
    scores.removeAll(missed);
    FlightResult result = close(plan, scores).results(Attribute.LIKING).get(0);
    assertThat(result.table().panelists()).hasSize(6);
    assertThat(result.table().tasted()).isEqualTo(27);
    assertThat(result.groups().orElseThrow().differences())
        .contains(new RankGroups.Difference("A", "E"));
    assertThat(sentence(result, Kind.LEFT_OUT))
        .isEqualTo(
            "Not tasted, and nothing else is lost by it: A by taster 1, C by"
                + " taster 2, E by taster 3.");
    // A harsh taster's missing cup does not make its food look better: B lies where all saw it.
    assertThat(result.means().get(0).mean()).isGreaterThan(result.means().get(1).mean() + 0.9);
  }

  @Test
  void bitterSample_isStoppedForEveryone() {
    SessionPlan plan = plan(3, 2, Optional.empty());
    List<Score> scores = scores(plan, "6 7 8; 6 7 8");
    scores.add(new Score(code(plan, 1, "B"), Attribute.BITTER, 1));
    ClosedSession session = new ClosedSession(plan, scores, sample -> 1);
    assertThat(session.stopped()).containsExactly("B");
    FlightResult result = session.results(Attribute.LIKING).get(0);
    assertThat(result.table().samples()).containsExactly("A", "C");
    assertThat(sentence(result, Kind.LEFT_OUT))
        .isEqualTo("B is left out: somebody found it bitter.");
  }

  @Test
  void panelThatCannotSayWhichDiffer_isToldSoInWordsToActOn() {
    FlightResult result =
        close(plan(6, 4, Optional.empty()), "9 5 5 5 5 5; 9 5 5 5 5 5; 9 5 5 5 5 5; 5 5 5 5 5 5")
            .results(Attribute.LIKING)
            .get(0);
    assertThat(result.groups().orElseThrow().differences()).isEmpty();
    assertThat(sentence(result, Kind.DIFFERENCE))
        .isEqualTo(
            "These samples are not all alike, but so few tasters cannot show which of them differ:"
                + " the same samples with 8 tasters, or in a second session, would tell more. Until"
                + " then choose none for it and drop none for it.");
  }

  @Test
  void intervals_stayOnTheScale() {
    FlightResult result =
        close(plan(3, 3, Optional.empty()), "9 8 1; 9 9 1; 8 3 2").results(Attribute.LIKING).get(0);
    assertThat(result.means())
        .allSatisfy(
            mean -> {
              assertThat(mean.interval().orElseThrow().low()).isBetween(1.0, 9.0);
              assertThat(mean.interval().orElseThrow().high()).isBetween(1.0, 9.0);
            });
  }

  @Test
  void otherQuestions_areTestedTogether_andOnlyIfTheMainOneSpeaks() {
    SessionPlan plan = plan(4, 5, Optional.empty());
    String clear = "9 7 5 2; 9 7 5 2; 9 7 5 2; 9 7 5 2; 9 7 5 2";
    String none = "5 5 5 5; 5 5 5 5; 5 5 5 5; 5 5 5 5; 5 5 5 5";
    List<Score> found = scores(plan, clear);
    found.addAll(asked(plan, Attribute.SWEETNESS, "5 4 3 1; 5 4 3 1; 5 4 3 1; 5 4 3 1; 5 4 3 1"));
    found.addAll(asked(plan, Attribute.NUTTY, "1 2 1 2; 2 1 1 2; 1 1 2 2; 2 2 1 1; 1 2 2 1"));
    ClosedSession spoke = close(plan, found);
    assertThat(spoke.results(Attribute.SWEETNESS).get(0).standing())
        .isEqualTo(QuestionStanding.TESTED);
    assertThat(spoke.results(Attribute.SWEETNESS).get(0).groups()).isPresent();
    assertThat(spoke.results(Attribute.NUTTY).get(0).groups()).isEmpty();
    List<Score> silent = scores(plan, none);
    silent.addAll(asked(plan, Attribute.SWEETNESS, "5 4 3 1; 5 4 3 1; 5 4 3 1; 5 4 3 1; 5 4 3 1"));
    FlightResult sweet = close(plan, silent).results(Attribute.SWEETNESS).get(0);
    assertThat(sweet.standing()).isEqualTo(QuestionStanding.DESCRIBED);
    assertThat(sweet.groups()).isEmpty();
    assertThat(sweet.means()).hasSize(4);
    assertThat(
            new ClosedSession(plan, Attribute.SWEETNESS, silent, sample -> 1)
                .results(Attribute.SWEETNESS)
                .get(0)
                .groups())
        .isPresent();
  }

  @Test
  void evidence_ofThreeFruitsAndTwoSessions_isNoLongerEarly() {
    assertThat(new Evidence("K7", 3, 2).isEarly()).isFalse();
    assertThat(new Evidence("K7", 3, 1).isEarly()).isTrue();
    assertThat(new Evidence("K7", 2, 2).isEarly()).isTrue();
  }

  private static ClosedSession close(SessionPlan plan, String rows) {
    return close(plan, scores(plan, rows));
  }

  private static ClosedSession close(SessionPlan plan, List<Score> scores) {
    return new ClosedSession(plan, scores, sample -> 1);
  }

  private static Score score(SessionPlan plan, int panelist, String sample, int value) {
    return new Score(code(plan, panelist, sample), Attribute.LIKING, value);
  }

  private static SessionPlan plan(int samples, int panelists, Optional<String> duplicate) {
    return SessionPlan.draw(
        new SessionRequest(
            IntStream.range(0, samples)
                .mapToObj(i -> "" + (char) ('A' + i))
                .map(name -> new Sample(name, List.of(name + "-1")))
                .toList(),
            IntStream.range(0, panelists).mapToObj(i -> "taster " + (i + 1)).toList(),
            Optional.empty(),
            duplicate,
            Optional.empty(),
            8,
            Blinding.FULL),
        42);
  }

  private static List<Score> scores(SessionPlan plan, String rows) {
    return asked(plan, Attribute.LIKING, rows);
  }

  private static List<Score> asked(SessionPlan plan, Attribute attribute, String rows) {
    List<Score> scores = new ArrayList<>();
    String[] panelists = rows.split(";");
    for (int i = 0; i < panelists.length; i++) {
      int[] row =
          Arrays.stream(panelists[i].trim().split(" ")).mapToInt(Integer::parseInt).toArray();
      for (int j = 0; j < row.length; j++) {
        scores.add(new Score(code(plan, i, "" + (char) ('A' + j)), attribute, row[j]));
      }
    }
    return scores;
  }

  private static List<Score> duplicates(SessionPlan plan, int... values) {
    return IntStream.range(0, values.length)
        .mapToObj(
            i ->
                plan.sheets().get(i).cups().stream()
                    .filter(Cup::isDuplicate)
                    .map(cup -> new Score(cup.code(), Attribute.LIKING, values[i]))
                    .findFirst()
                    .orElseThrow())
        .toList();
  }

  private static String code(SessionPlan plan, int panelist, String sample) {
    return plan.sheets().get(panelist).cups().stream()
        .filter(cup -> cup.sample().equals(sample) && !cup.isDuplicate())
        .map(Cup::code)
        .findFirst()
        .orElseThrow();
  }

  private static String sentence(FlightResult result, Kind kind) {
    return result.conclusions().stream()
        .filter(c -> c.kind() == kind)
        .map(Conclusion::sentence)
        .findFirst()
        .orElseThrow();
  }
}
