package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    assertThat(result.test().orElseThrow().rankSums()).containsExactly(19, 19, 14, 12, 9.5, 7.5, 3);
    assertThat(sentence(result, Kind.DIFFERENCE))
        .isEqualTo(
            "The panel told the samples apart (exact p 0.000736: 2338 of 3,175,200 arrangements of"
                + " the mid-ranks, one panelist held).");
    assertThat(sentence(result, Kind.PAIRS))
        .isEqualTo(
            "Allowing for all pairs (Newell and MacFarlane 1987), A and B are liked better than G;"
                + " no other two can be held apart.");
    assertThat(sentence(result, Kind.EARLY_IMPRESSION))
        .isEqualTo("One fruit each: early impression.");
    assertThat(sentence(result, Kind.UNIT)).contains("these fruits");
    assertThat(sentence(result, Kind.AGREEMENT)).startsWith("The tasters agreed strongly");
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
    assertThat(sentence(result, Kind.NO_DIFFERENCE))
        .startsWith("The panel did not tell the samples apart (exact p 1");
    assertThat(sentence(result, Kind.AGREEMENT)).contains("hardly agreed (Kendall's W 0.00)");
  }

  @Test
  void hiddenDuplicate_showsWhoIsUnsteady() {
    SessionPlan plan = plan(3, 2, Optional.of("A"));
    List<Score> scores = scores(plan, "6 7 8; 6 7 8");
    scores.addAll(duplicates(plan, 6, 2));
    FlightResult result = new ClosedSession(plan, scores).results(Attribute.LIKING).get(0);
    assertThat(sentence(result, Kind.REPEATABILITY))
        .isEqualTo(
            "Served the same sample twice, scores differed: taster 1 by 0, taster 2 by 4"
                + " (unsteady).");
    assertThat(result.table().scores()).containsExactly(List.of(6, 7, 8), List.of(6, 7, 8));
  }

  @Test
  void tasterWhoMissedASample_isLeftOutByName() {
    SessionPlan plan = plan(3, 3, Optional.empty());
    List<Score> scores = scores(plan, "6 7 8; 6 7 8; 6 7 8");
    scores.remove(8);
    FlightResult result = new ClosedSession(plan, scores).results(Attribute.LIKING).get(0);
    assertThat(result.table().panelists()).containsExactly("taster 1", "taster 2");
    assertThat(sentence(result, Kind.LEFT_OUT))
        .isEqualTo("taster 3 is left out, having missed a sample.");
  }

  @Test
  void bitterSample_isStoppedForEveryone() {
    SessionPlan plan = plan(3, 2, Optional.empty());
    List<Score> scores = scores(plan, "6 7 8; 6 7 8");
    scores.add(new Score(code(plan, 1, "B"), Attribute.BITTER, 1));
    ClosedSession session = new ClosedSession(plan, scores);
    assertThat(session.stopped()).containsExactly("B");
    FlightResult result = session.results(Attribute.LIKING).get(0);
    assertThat(result.table().samples()).containsExactly("A", "C");
    assertThat(sentence(result, Kind.LEFT_OUT))
        .isEqualTo("B is left out: somebody found it bitter.");
  }

  @Test
  void evidence_ofThreeFruitsAndTwoSessions_isNoLongerEarly() {
    assertThat(new Evidence("K7", 3, 2).isEarly()).isFalse();
    assertThat(new Evidence("K7", 3, 1).isEarly()).isTrue();
    assertThat(new Evidence("K7", 2, 2).isEarly()).isTrue();
  }

  private static ClosedSession close(SessionPlan plan, String rows) {
    return new ClosedSession(plan, scores(plan, rows));
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
    List<Score> scores = new ArrayList<>();
    String[] panelists = rows.split(";");
    for (int i = 0; i < panelists.length; i++) {
      int[] row =
          Arrays.stream(panelists[i].trim().split(" ")).mapToInt(Integer::parseInt).toArray();
      for (int j = 0; j < row.length; j++) {
        scores.add(new Score(code(plan, i, "" + (char) ('A' + j)), Attribute.LIKING, row[j]));
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
