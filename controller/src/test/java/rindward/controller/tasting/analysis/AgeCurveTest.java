package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.tasting.analysis.AgedTaste.Occasion;

/** Liking over age, and the window that a grower's own tastes tell. */
class AgeCurveTest {

  @Test
  void at_dayFarFromAnyTaste_isUnknown() {
    AgeCurve curve = new AgeCurve(List.of(kitchen(20, 6), kitchen(100, 8)));
    assertThat(curve.at(60)).isEmpty();
    assertThat(curve.at(20).orElseThrow()).isEqualTo(6);
  }

  @Test
  void at_sessionAndKitchenOnOneDay_weighsTheSessionFourTimes() {
    AgeCurve curve = new AgeCurve(List.of(kitchen(50, 9), new AgedTaste(50, 4, Occasion.SESSION)));
    assertThat(curve.at(50).orElseThrow()).isCloseTo(5, within(1e-12));
  }

  @Test
  void window_threeSessions_findsTheMiddleOneAndIsEnough() {
    AgeCurve curve = new AgeCurve(List.of(session(10, 5), session(60, 8), session(110, 6)));
    assertThat(curve.window().orElseThrow())
        .isEqualTo(new EatingWindow(40, 80, 60, 8, 3, true, true, true));
  }

  @Test
  void window_likedAsMuchAfterAGap_goesOnBeyondIt_andStaysOpen() {
    AgeCurve curve = new AgeCurve(List.of(session(10, 5), session(60, 8), session(110, 8)));
    EatingWindow window = curve.window().orElseThrow();
    assertThat(window.to()).isEqualTo(110);
    assertThat(window.isStartSeen()).isTrue();
    assertThat(window.isEndSeen()).isFalse();
    assertThat(window.sentence()).contains("110 after harvest (the last day near which");
  }

  @Test
  void window_twoKitchenTastes_areTooFew() {
    AgeCurve curve = new AgeCurve(List.of(kitchen(20, 6), kitchen(60, 8)));
    assertThat(curve.window().orElseThrow().sentence())
        .endsWith("by 2 tastes; too few to go by instead of the guide.");
  }

  @Test
  void window_nothingTasted_isEmpty() {
    assertThat(new AgeCurve(List.of()).window()).isEmpty();
  }

  @Test
  void taste_offTheScale_isRefused() {
    assertThatThrownBy(() -> kitchen(20, 10))
        .hasMessage("liking was '10.0' but it must be 1 (dislike extremely) to 9 (like extremely)");
  }

  private static AgedTaste kitchen(int day, double liking) {
    return new AgedTaste(day, liking, Occasion.KITCHEN);
  }

  private static AgedTaste session(int day, double liking) {
    return new AgedTaste(day, liking, Occasion.SESSION);
  }
}
