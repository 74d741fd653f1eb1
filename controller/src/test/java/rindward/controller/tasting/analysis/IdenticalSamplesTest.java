package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sample;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.SessionRequest;
import rindward.controller.tasting.design.Sheet;

/**
 * Sixteen questions are sixteen chances to find something where nothing is. Sessions in which every
 * cup holds the same claim anything at all in at most 6 % of cases: the 5 % that are meant, and two
 * standard errors of a count among so few.
 */
class IdenticalSamplesTest {
  private static final int SESSIONS = 400;

  @Test
  void sessionsOfOneFood_claimSomethingInAtMostFivePercent() {
    SplittableRandom random = new SplittableRandom(20);
    int claiming = 0;
    for (int i = 0; i < SESSIONS; i++) {
      int samples = 3 + i % 4;
      if (claimsAnything(session(samples, 4, random))) {
        claiming++;
      }
    }
    assertThat(claiming).isLessThanOrEqualTo(SESSIONS * 7 / 100);
  }

  @Test
  void goesOfOneFood_areAllowedForLikeQuestions() {
    SplittableRandom random = new SplittableRandom(21);
    int claiming = 0;
    for (int i = 0; i < SESSIONS; i++) {
      if (claimsAnything(session(10, 4, random))) {
        claiming++;
      }
    }
    assertThat(claiming).isLessThanOrEqualTo(SESSIONS * 7 / 100);
  }

  private static boolean claimsAnything(ClosedSession session) {
    return Arrays.stream(Attribute.values())
        .flatMap(attribute -> session.results(attribute).stream())
        .anyMatch(result -> result.groups().isPresent());
  }

  private static ClosedSession session(int samples, int tasters, SplittableRandom random) {
    SessionPlan plan =
        SessionPlan.draw(
            new SessionRequest(
                IntStream.range(0, samples)
                    .mapToObj(i -> new Sample("S" + i, List.of("1")))
                    .toList(),
                IntStream.range(0, tasters).mapToObj(i -> "taster " + i).toList(),
                Optional.of("S0"),
                Optional.empty(),
                Optional.empty(),
                6,
                Blinding.FULL),
            random.nextLong());
    List<Score> scores = new ArrayList<>();
    for (Sheet sheet : plan.sheets()) {
      for (Cup cup : sheet.cups()) {
        for (Attribute attribute : Attribute.values()) {
          if (attribute != Attribute.BITTER) {
            scores.add(new Score(cup.code(), attribute, any(attribute, random)));
          }
        }
      }
    }
    return new ClosedSession(plan, scores, sample -> 1);
  }

  private static int any(Attribute attribute, SplittableRandom random) {
    int lowest = attribute.scale().lowest();
    return random.nextInt(lowest, attribute.scale().highest() + 1);
  }
}
