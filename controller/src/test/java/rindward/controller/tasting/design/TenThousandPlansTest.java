package rindward.controller.tasting.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Where cups stand over ten thousand plans. As plans were drawn before, the counted cup of the
 * sample served twice stood at place 2.34 of 6, the others at 3.50, and it followed itself in a
 * third of the orders.
 */
class TenThousandPlansTest {
  private static final int PLANS = 10_000;

  @Test
  void everyCupStandsInTheMiddleOnAverage_andNoneFollowsItself() {
    double twice = 0;
    double others = 0;
    int followed = 0;
    double squares = 0;
    for (int i = 0; i < PLANS; i++) {
      SessionPlan plan = SessionPlan.draw(request(5, 3, 6), "key " + i);
      for (Sheet sheet : plan.sheets()) {
        List<Cup> cups = sheet.cups();
        for (int place = 0; place < cups.size(); place++) {
          Cup cup = cups.get(place);
          if (place > 0 && cups.get(place - 1).sample().equals(cup.sample())) {
            followed++;
          }
          if (!cup.isDuplicate() && cup.sample().equals("S0")) {
            twice += place + 1;
            squares += (place - 2.5) * (place - 2.5);
          } else if (!cup.isDuplicate()) {
            others += place + 1;
          }
        }
      }
    }
    int sheets = 3 * PLANS;
    assertThat(followed).isZero();
    // Four standard errors of a mean of 30,000 places, each with a deviation of 1.7 or so.
    assertThat(twice / sheets).isCloseTo(3.5, within(0.04));
    assertThat(others / (4.0 * sheets)).isCloseTo(3.5, within(0.04));
    // Places from 1 to 6 alike would have a variance of 35/12; ends are a little likelier here.
    assertThat(squares / sheets).isBetween(2.4, 3.6);
  }

  @Test
  void goesHoldWhatChanceGivesThem_andNobodyBeginsWithTheSameGo() {
    int together = 0;
    int firstGo = 0;
    for (int i = 0; i < PLANS; i++) {
      SessionPlan plan = SessionPlan.draw(request(9, 2, 5), "key " + i);
      Set<Integer> begins = new HashSet<>();
      plan.sheets().forEach(sheet -> begins.add(sheet.cups().get(0).flight()));
      assertThat(begins).hasSize(2);
      firstGo += plan.sheets().get(0).cups().get(0).flight() == 0 ? 1 : 0;
      together += goOf(plan, "S1") == goOf(plan, "S2") ? 1 : 0;
    }
    // Eight others in goes of 3, 3 and 2 share one in 1/4 of the draws; typed order always.
    assertThat((double) together / PLANS).isCloseTo(0.25, within(0.02));
    assertThat((double) firstGo / PLANS).isCloseTo(1 / 3.0, within(0.02));
  }

  @Test
  void sameKeyDrawsTheSame_andAKeyOfOneBitMoreAnother() {
    SessionRequest request = request(5, 3, 6);
    assertThat(SessionPlan.draw(request, "a")).isEqualTo(SessionPlan.draw(request, "a"));
    assertThat(SessionPlan.draw(request, "a")).isNotEqualTo(SessionPlan.draw(request, "b"));
  }

  private static int goOf(SessionPlan plan, String sample) {
    return IntStream.range(0, plan.flights().size())
        .filter(i -> plan.flights().get(i).samples().contains(sample))
        .findFirst()
        .orElseThrow();
  }

  private static SessionRequest request(int samples, int tasters, int cups) {
    return new SessionRequest(
        IntStream.range(0, samples).mapToObj(i -> new Sample("S" + i, List.of("1"))).toList(),
        IntStream.range(0, tasters).mapToObj(i -> "taster " + i).toList(),
        Optional.of("S0"),
        Optional.of("S0"),
        Optional.empty(),
        cups,
        Blinding.FULL);
  }
}
