package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import rindward.controller.diagnosis.ColdTrial.Outcome;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/**
 * What the watch sees of a shed in December when something breaks, on the model's truth. Seeds are
 * years; those of a cold hour are named where the fault must matter. {@link ColdForecastTable}
 * prints many more, misses included.
 */
class RoomDetectorsScenarioTest {
  private static List<Outcome> deadHeaters(double kg, long... seeds) throws IOException {
    List<Outcome> outcomes = new ArrayList<>();
    for (long seed : seeds) {
      outcomes.add(ColdTrial.deadHeater(kg, seed, 11.5).run());
    }
    return outcomes;
  }

  private static double median(List<Outcome> outcomes, ToDoubleFunction<Outcome> what) {
    return outcomes.stream()
        .mapToDouble(what)
        .sorted()
        .skip(outcomes.size() / 2)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void heaterDies_roomWithFruit_isForecastWellAhead() throws IOException {
    List<Outcome> outcomes = deadHeaters(400, 1, 3, 5, 7, 10, 13, 15);
    assertThat(median(outcomes, Outcome::lead)).isGreaterThan(45);
    assertThat(median(outcomes, Outcome::share)).isGreaterThan(0.6);
    assertThat(outcomes).allSatisfy(o -> assertThat(o.heaterDead()).isBetween(5.0, 20.0));
  }

  @Test
  void heaterDies_nearlyEmptyRoom_isForecastTwentyMinutesAhead() throws IOException {
    List<Outcome> outcomes = deadHeaters(80, 1, 3, 7, 10, 13, 15);
    assertThat(median(outcomes, Outcome::lead)).isGreaterThan(20);
  }

  @Test
  void crossingThatIsSaid_comesWithinAThirdOfTheTime() throws IOException {
    for (Outcome o : deadHeaters(600, 1, 3, 7, 10, 15)) {
      assertThat((o.spoken() + o.said()) / o.crossed()).isBetween(0.67, 1.34);
    }
  }

  @Test
  void doorAjar_isSeenWithinThreeMinutes_onMildDaysToo() throws IOException {
    ShedFault door = ShedFault.of(Kind.DOOR_OPEN, "storage", 0.2);
    for (ColdTrial trial :
        List.of(
            new ColdTrial(400, 2, 12, 750, door, 7, 10, 1),
            new ColdTrial(400, 4, 12, 750, door, 6, 20, 1),
            new ColdTrial(400, 5, 12, 750, door, 7, 1, 1),
            new ColdTrial(400, 7, 12, 750, door, 6, 11, 1),
            new ColdTrial(400, 12, 12, 750, door, 5, 12, 1))) {
      assertThat(trial.run().fallSeen()).isBetween(0.0, 3.0);
    }
  }

  @Test
  void exhaustStuckOn_isForecastBeforeItIsCold() throws IOException {
    ShedFault stuck = ShedFault.of(Kind.OUTPUT_STUCK_ON, "storage-exhaust");
    Outcome outcome = new ColdTrial(400, 4, 12, 750, stuck, 6, 20, 8).run();
    assertThat(outcome.crossed()).isPositive();
    assertThat(outcome.lead()).isGreaterThan(45);
  }

  @Test
  void heaterTooSmallForTheNight_isForecastBeforeItIsCold() throws IOException {
    Outcome outcome = new ColdTrial(400, 4, 12, 300, null, 30, 0, 8).run();
    assertThat(outcome.crossed()).isPositive();
    assertThat(outcome.lead()).isGreaterThan(45);
    assertThat(outcome.heaterDead()).isEqualTo(ColdTrial.NEVER);
  }

  @Test
  void aMonthInWhichNothingBreaks_hasNoFalseWord() throws IOException {
    for (double kg : new double[] {80, 400}) {
      Outcome outcome = new ColdTrial(kg, 2, 12, 750, null, 30, 0, 0).run();
      assertThat(outcome.falseForecasts() + outcome.falseHeater() + outcome.falseFalls()).isZero();
    }
  }
}
