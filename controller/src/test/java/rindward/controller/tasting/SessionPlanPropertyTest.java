package rindward.controller.tasting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What must hold of any session that is drawn. */
class SessionPlanPropertyTest {

  @Property(tries = 60)
  void codesAreUnique_andSayNothing(
      @ForAll @IntRange(min = 2, max = 14) int samples,
      @ForAll @IntRange(min = 1, max = 12) int panelists,
      @ForAll long seed) {
    SessionPlan plan = SessionPlan.draw(SessionPlanTest.request(samples, panelists, 7), seed);
    List<String> codes = plan.sheets().stream().flatMap(s -> s.codes().stream()).toList();
    assertThat(codes).doesNotHaveDuplicates();
    assertThat(codes)
        .allMatch(code -> code.matches("[1-9]\\d\\d"))
        .noneMatch(code -> code.matches("[01689]{3}|123|234|345|456|567|678|789|.*(\\d).*\\1.*"));
  }

  @Property(tries = 40)
  void everyPanelistGetsEverySample_andTheDuplicateTwice(
      @ForAll @IntRange(min = 2, max = 14) int samples, @ForAll long seed) {
    SessionPlan plan = SessionPlan.draw(SessionPlanTest.request(samples, 3, 7), seed);
    for (Sheet sheet : plan.sheets()) {
      assertThat(sheet.cups()).extracting(Cup::sample).containsAll(plan.request().sampleNames());
      assertThat(sheet.cups()).filteredOn(Cup::isDuplicate).hasSize(1);
    }
  }

  @Property(tries = 40)
  void noFlightIsTooLong_andEachHasTheCheck(
      @ForAll @IntRange(min = 2, max = 20) int samples,
      @ForAll @IntRange(min = 3, max = 8) int most) {
    List<Flight> flights = Flight.of(SessionPlanTest.request(samples, 1, most));
    assertThat(flights)
        .allSatisfy(flight -> assertThat(flight.cups()).hasSizeBetween(2, most))
        .allSatisfy(flight -> assertThat(flight.samples()).contains("lot 0"));
  }
}
