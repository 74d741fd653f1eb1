package rindward.controller.tasting.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;

/** A session as it is drawn: flights, hidden duplicate and codes. */
class SessionPlanTest {
  @Test
  void draw_sameSeed_isTheSameSession() {
    SessionRequest request = request(5, 4, 6);
    assertThat(SessionPlan.draw(request, 11)).isEqualTo(SessionPlan.draw(request, 11));
    assertThat(SessionPlan.draw(request, 11).sheets())
        .isNotEqualTo(SessionPlan.draw(request, 12).sheets());
  }

  @Test
  void problems_areAllToldAtOnce() {
    SessionRequest request =
        new SessionRequest(
            List.of(new Sample("K7", List.of("K7-1"))),
            List.of("Ann", "Ann"),
            Optional.of("K8"),
            Optional.empty(),
            Optional.empty(),
            9,
            Blinding.FULL);
    assertThat(request.problems())
        .containsExactly(
            "samples were '[K7]' but there must be at least two to compare",
            "panelists named 'Ann' twice but each must have its own name",
            "check was 'K8' but it must be one of the samples [K7]",
            "cupsPerFlight was '9' but it must be 3 to 8, as a tired tongue tells nothing");
    assertThatThrownBy(() -> SessionPlan.draw(request, 1)).hasMessageContaining("at least two");
  }

  /** The same lot twice would be compared with itself, and its duplicate told apart. */
  @Test
  void problems_aSampleNamedTwice_isOne() {
    SessionRequest request =
        new SessionRequest(
            List.of(
                new Sample("K7", List.of("K7-1")),
                new Sample("B2", List.of("B2-1")),
                new Sample("K7", List.of("K7-2"))),
            List.of("Ann"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            6,
            Blinding.FULL);
    assertThat(request.problems())
        .containsExactly("samples named 'K7' twice but each must have its own name");
  }

  @Test
  void problems_severalFlightsWithoutACheck_isOne() {
    SessionRequest request =
        new SessionRequest(
            samples(9),
            List.of("Ann"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            6,
            Blinding.FULL);
    assertThat(request.problems())
        .containsExactly("check was empty but 9 samples take 2 flights, which must share one");
  }

  @Test
  void refusal_unknownCodeOrScoreOffItsScale_isOneSentence() {
    SessionPlan plan = SessionPlan.draw(request(3, 2, 6), 3);
    String code = plan.sheets().get(0).codes().get(0);
    assertThat(plan.refusal(new Score(code, Attribute.LIKING, 9))).isEmpty();
    assertThat(plan.refusal(new Score(code, Attribute.LIKING, 10)))
        .contains("liking was '10' but it must be 1 (dislike extremely) to 9 (like extremely)");
    assertThat(plan.refusal(new Score(code, Attribute.MOISTNESS, 0)))
        .contains("moistness was '0' but it must be 1 (fully dry and mealy) to 5 (fully wet)");
    assertThat(plan.refusal(new Score("000", Attribute.LIKING, 9)))
        .contains("code was '000' but it must be that of a cup of this session");
  }

  static SessionRequest request(int samples, int panelists, int cupsPerFlight) {
    return new SessionRequest(
        samples(samples),
        IntStream.range(0, panelists).mapToObj(i -> "taster " + i).toList(),
        Optional.of("lot 0"),
        Optional.of("lot 1"),
        Optional.of("warm-up"),
        cupsPerFlight,
        Blinding.FULL);
  }

  private static List<Sample> samples(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Sample("lot " + i, List.of("fruit " + i)))
        .toList();
  }
}
