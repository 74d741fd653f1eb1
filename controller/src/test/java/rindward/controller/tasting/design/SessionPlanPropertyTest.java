package rindward.controller.tasting.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import rindward.controller.Any;
import rindward.controller.Seeded;

/** What must hold of any session that is drawn. */
class SessionPlanPropertyTest {

  @Seeded(cases = 60)
  void codesAreUnique_andSayNothing(Any any) {
    int samples = any.intBetween(2, 14);
    int panelists = any.intBetween(1, 12);
    long seed = any.anyLong();
    SessionPlan plan = SessionPlan.draw(SessionPlanTest.request(samples, panelists, 7), seed);
    List<String> codes = plan.sheets().stream().flatMap(s -> s.codes().stream()).toList();
    assertThat(codes).doesNotHaveDuplicates();
    assertThat(codes)
        .allMatch(code -> code.matches("[1-9]\\d\\d"))
        .noneMatch(code -> code.matches("[01689]{3}|123|234|345|456|567|678|789|.*(\\d).*\\1.*"));
  }

  @Seeded(cases = 40)
  void everyPanelistGetsEverySample_andTheDuplicateTwice(Any any) {
    int samples = any.intBetween(2, 14);
    long seed = any.anyLong();
    SessionPlan plan = SessionPlan.draw(SessionPlanTest.request(samples, 3, 7), seed);
    for (Sheet sheet : plan.sheets()) {
      assertThat(sheet.cups()).extracting(Cup::sample).containsAll(plan.request().sampleNames());
      assertThat(sheet.cups()).filteredOn(Cup::isDuplicate).hasSize(1);
    }
  }

  @Seeded(cases = 40)
  void noFlightIsTooLong_andEachHasTheCheck(Any any) {
    int samples = any.intBetween(2, 20);
    int most = any.intBetween(3, 8);
    List<Flight> flights = Flight.of(SessionPlanTest.request(samples, 1, most));
    assertThat(flights)
        .allSatisfy(flight -> assertThat(flight.cups()).hasSizeBetween(2, most))
        .allSatisfy(flight -> assertThat(flight.samples()).contains("lot 0"));
  }
}
