package rindward.controller.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;

class HumidityEffectTest {
  private static final HumiditySide COST = side(HumidityRole.COST, 75_000, 75_000, 1000);
  private static final HumiditySide HAZARD = side(HumidityRole.HAZARD, 85_000, 85_000, 0);
  private static final HumiditySide DRY_GATE = side(HumidityRole.GATE, 85_000, 50_000, 500);
  private static final HumiditySide DAMP_GATE = side(HumidityRole.GATE, 75_000, 80_000, 0);

  @Test
  void aCostTakesNothingFromTheRateButIsTold() {
    HumidityEffect effect = new HumidityEffect(Optional.of(COST), Optional.of(HAZARD));
    assertThat(effect.factor(20_000)).isEqualTo(1000);
    assertThat(effect.side(20_000)).contains(COST);
    assertThat(effect.side(75_000)).isEmpty();
  }

  @Test
  void aHazardEarnsNothingJustPastItsLimitAndAllOnIt() {
    HumidityEffect effect = new HumidityEffect(Optional.of(COST), Optional.of(HAZARD));
    assertThat(effect.factor(85_000)).isEqualTo(1000);
    assertThat(effect.factor(85_001)).isZero();
    assertThat(effect.side(85_001)).contains(HAZARD);
  }

  @Test
  void aGateLetsPartThrough() {
    HumidityEffect dry = new HumidityEffect(Optional.of(DRY_GATE), Optional.empty());
    assertThat(dry.factor(85_000)).isEqualTo(1000);
    assertThat(dry.factor(67_500)).isEqualTo(750);
    assertThat(dry.factor(50_000)).isEqualTo(500);
    assertThat(dry.factor(10_000)).isEqualTo(500);
    HumidityEffect damp = new HumidityEffect(Optional.empty(), Optional.of(DAMP_GATE));
    assertThat(damp.factor(75_000)).isEqualTo(1000);
    assertThat(damp.factor(77_500)).isEqualTo(500);
    assertThat(damp.factor(80_000)).isZero();
    assertThat(damp.factor(100_000)).isZero();
    assertThat(damp.factor(0)).isEqualTo(1000);
  }

  @Test
  void sidesThatCross_areRefused() {
    assertThatThrownBy(
            () ->
                new HumidityEffect(
                    Optional.of(side(HumidityRole.COST, 90_000, 90_000, 1000)),
                    Optional.of(HAZARD)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the dry one must not lie above");
  }

  @Seeded(cases = 300)
  void leastAndMostWithinAnInterval_areThoseOfEveryHumidityInIt(Any any) {
    int low = any.intBetween(0, 99_000);
    int width = any.intBetween(0, 400);
    List<HumidityEffect> effects =
        List.of(
            new HumidityEffect(Optional.of(COST), Optional.of(HAZARD)),
            new HumidityEffect(Optional.of(DRY_GATE), Optional.empty()),
            new HumidityEffect(Optional.empty(), Optional.of(DAMP_GATE)));
    for (HumidityEffect effect : effects) {
      int least = HumiditySide.WHOLE;
      int most = 0;
      for (int humidity = low; humidity <= low + width; humidity++) {
        least = Math.min(least, effect.factor(humidity));
        most = Math.max(most, effect.factor(humidity));
      }
      assertThat(effect.minimumWithin(low, low + width)).isEqualTo(least);
      assertThat(effect.maximumWithin(low, low + width)).isEqualTo(most);
    }
  }

  private static HumiditySide side(HumidityRole role, int limit, int until, int factor) {
    return new HumiditySide(role, cited(limit), cited(until), cited(factor), "A sentence.");
  }

  private static Cited<Integer> cited(int value) {
    return new Cited<>(value, List.of(Sources.FROM_MEMORY));
  }
}
