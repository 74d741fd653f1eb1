package rindward.controller.mixed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is said of an effect when its spread is integrated over. */
class SpreadIntegralTest {
  /**
   * One number a group: the data cannot tell the groups' spread from the rest's, and the prior has
   * to (the effects in eight schools, Rubin 1981, J. Educ. Stat. 6: 377, without their errors). The
   * integral is taken by brute force as well, and the few points must agree with it, to two or
   * three in a hundred in this the hardest case.
   */
  @Test
  void fewPoints_agreeWithAFineGrid() {
    double[] effect = {28, 8, -3, 7, -1, 1, 18, 12};
    int[] school = {0, 1, 2, 3, 4, 5, 6, 7};
    MixedModel model =
        new MixedModel(
            effect, List.of(Effect.of(8, school, 0), Effect.intercept(8)), school, Rest.same(1, 8));
    HalfT prior = new HalfT(new double[] {10, 10});
    List<WeightedSpreads> few = SpreadIntegral.of(model, prior);
    Mixture first = mixture(model, few, EffectSum.of(0, 0).plus(EffectSum.of(1, 0), 1));
    List<WeightedSpreads> fine = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    double all = 0;
    for (int i = 0; i < 140; i++) {
      for (int j = 0; j < 140; j++) {
        double[] spreads = {Math.exp(-5 + i * 0.07), Math.exp(-3 + j * 0.05)};
        double weight =
            Math.exp(model.at(spreads).logLikelihood() + prior.of(spreads))
                * spreads[0]
                * spreads[1];
        all += weight;
        weights.add(weight);
        fine.add(new WeightedSpreads(spreads, weight));
      }
    }
    double sum = all;
    Mixture exact =
        mixture(
            model,
            fine.stream().map(w -> new WeightedSpreads(w.spreads(), w.weight() / sum)).toList(),
            EffectSum.of(0, 0).plus(EffectSum.of(1, 0), 1));
    assertThat(first.mean()).isCloseTo(exact.mean(), Offset.offset(0.15));
    assertThat(first.error()).isCloseTo(exact.error(), Offset.offset(0.4));
    assertThat(first.chanceAbove(10)).isCloseTo(exact.chanceAbove(10), Offset.offset(0.03));
    assertThat(first.chanceAbove(exact.quantile(0.9))).isCloseTo(0.1, Offset.offset(0.02));
  }

  /** Where a maximum would call the spread zero, the integral does not (Chung et al. 2013). */
  @Test
  void groupsThatLookAlike_areNotTakenForTheSame() {
    double[] value = {5, 6, 7, 5.1, 6, 6.9, 5, 6.1, 6.9};
    int[] group = {0, 0, 0, 1, 1, 1, 2, 2, 2};
    MixedModel model =
        new MixedModel(
            value, List.of(Effect.of(3, group, 0), Effect.intercept(9)), group, Rest.same(1, 9));
    double[] likeliest = LikeliestSpreads.of(model, LogPrior.NONE, new double[] {1, 1}, 1e-4);
    assertThat(likeliest[0]).isLessThan(0.01);
    Mixture first =
        mixture(
            model, SpreadIntegral.of(model, new HalfT(new double[] {1, 1})), EffectSum.of(0, 0));
    assertThat(first.error()).isBetween(0.2, 0.8);
  }

  private static Mixture mixture(MixedModel model, List<WeightedSpreads> points, EffectSum sum) {
    return new Mixture(
        points.stream().map(point -> model.at(point.spreads()).sum(sum)).toList(),
        points.stream().map(WeightedSpreads::weight).toList());
  }
}
