package rindward.controller.mixed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The core by REML, against what lme4 gives of published designs, and against a published one. */
class RemlTest {
  private static final double PRECISION = 1e-8;

  /** Crossed: plate and sample (Davies and Goldsmith 1972, Statistical Methods in Research). */
  @Test
  void crossed() {
    PublishedDesign design = PublishedDesign.of("penicillin");
    crossed(design, PublishedDesign.expected("penicillin"));
  }

  @Test
  void crossedAndUnbalanced() {
    crossed(
        PublishedDesign.of("penicillin").unbalanced(),
        PublishedDesign.expected("penicillin, rows 3, 10, 17 ... left out"));
  }

  private static void crossed(PublishedDesign design, Map<String, Double> expected) {
    int[] plate = PublishedDesign.levels(design.a);
    int[] sample = PublishedDesign.levels(design.b);
    Fit fit =
        fit(
            design,
            List.of(
                Effect.of(24, plate, 0), Effect.of(6, sample, 1), Effect.intercept(plate.length)),
            plate,
            2,
            expected);
    fit.variances("plate", "sample", "Residual");
    fit.fixed("(Intercept)", 2);
    fit.predictions("plate", 0, design.a);
    fit.predictions("sample", 1, design.b);
  }

  /** Nested: sample within batch (the same book). */
  @Test
  void nested() {
    PublishedDesign design = PublishedDesign.of("pastes");
    int[] batch = PublishedDesign.levels(design.a);
    int[] sample = PublishedDesign.levels(design.b);
    Fit fit =
        fit(
            design,
            List.of(
                Effect.of(30, sample, 0), Effect.of(10, batch, 1), Effect.intercept(batch.length)),
            batch,
            2,
            PublishedDesign.expected("pastes"));
    fit.variances("sample", "batch", "Residual");
    fit.fixed("(Intercept)", 2);
    fit.predictions("sample", 0, design.b);
    fit.predictions("batch", 1, design.a);
  }

  /** Split plot: recipes, each baked at six heats (Cook 1938, in Cochran and Cox 1957). */
  @Test
  void splitPlot() {
    PublishedDesign design = PublishedDesign.of("cake");
    int[] batch = PublishedDesign.levels(design.a);
    double[] second = is(design.b, "B");
    double[] third = is(design.b, "C");
    Fit fit =
        fit(
            design,
            List.of(
                Effect.of(45, batch, 0),
                Effect.intercept(batch.length),
                Effect.slope(second),
                Effect.slope(third),
                Effect.slope(design.x())),
            batch,
            1,
            PublishedDesign.expected("cake"));
    fit.variances("recipe:replicate", "Residual");
    fit.fixed("(Intercept)", 1);
    fit.fixed("recipeB", 2);
    fit.fixed("recipeC", 3);
    fit.fixed("temp", 4);
  }

  /**
   * Taster by product, which is most of it (the {@code ham} data of Kuznetsova, Brockhoff,
   * Christensen 2017, J. Stat. Softw. 82(13)).
   */
  @Test
  void tasterByProduct() {
    PublishedDesign design = PublishedDesign.of("ham");
    int[] product = PublishedDesign.levels(design.a);
    int[] consumer = PublishedDesign.levels(design.b);
    int[] both = PublishedDesign.levels(design.both());
    Fit fit =
        fit(
            design,
            List.of(
                Effect.of(324, both, 0),
                Effect.of(81, consumer, 1),
                Effect.of(4, product, 2),
                Effect.intercept(both.length)),
            consumer,
            3,
            PublishedDesign.expected("ham"));
    fit.variances("Product:Consumer", "Consumer", "Product", "Residual");
    fit.fixed("(Intercept)", 3);
    fit.predictions("Product", 2, design.a);
  }

  @Test
  void productsThatAreFree() {
    PublishedDesign design = PublishedDesign.of("ham");
    int[] consumer = PublishedDesign.levels(design.b);
    int[] both = PublishedDesign.levels(design.both());
    Fit fit =
        fit(
            design,
            List.of(
                Effect.of(324, both, 0),
                Effect.of(81, consumer, 1),
                Effect.intercept(both.length),
                Effect.slope(is(design.a, "2")),
                Effect.slope(is(design.a, "3")),
                Effect.slope(is(design.a, "4"))),
            consumer,
            2,
            PublishedDesign.expected("ham, Product fixed"));
    fit.variances("Product:Consumer", "Consumer", "Residual");
    fit.fixed("(Intercept)", 2);
    fit.fixed("Product2", 3);
    fit.fixed("Product3", 4);
    fit.fixed("Product4", 5);
  }

  /**
   * Six workers at three machines, three times each: data of Milliken and Johnson 1992, Analysis of
   * Messy Data, as Pinheiro and Bates 2000 (Mixed-Effects Models in S and S-PLUS, section 1.3)
   * print their REML fit: deviations 4.78, 3.73 and 0.96, log-likelihood -107.84, 52.356 with an
   * error of 2.486, differences 7.967 and 13.917 with an error of 2.177.
   */
  @Test
  void workersAtMachines() {
    double[] score = {
      52.0, 52.8, 53.1, 51.8, 52.8, 53.1, 60.0, 60.2, 58.4, 51.1, 52.3, 50.3, 50.9, 51.8, 51.4,
      46.4, 44.8, 49.2, 62.1, 62.6, 64.0, 59.7, 60.0, 59.0, 68.6, 65.8, 69.7, 63.2, 62.8, 62.2,
      64.8, 65.0, 65.4, 43.7, 44.2, 43.0, 67.5, 67.2, 66.9, 61.5, 61.7, 62.3, 70.8, 70.6, 71.0,
      64.1, 66.2, 64.0, 72.1, 72.0, 71.1, 62.0, 61.4, 60.5
    };
    int[] worker = new int[54];
    int[] both = new int[54];
    double[] second = new double[54];
    double[] third = new double[54];
    for (int row = 0; row < 54; row++) {
      worker[row] = row % 18 / 3;
      both[row] = row / 3;
      second[row] = row / 18 == 1 ? 1 : 0;
      third[row] = row / 18 == 2 ? 1 : 0;
    }
    MixedModel model =
        new MixedModel(
            score,
            List.of(
                Effect.of(18, both, 0),
                Effect.of(6, worker, 1),
                Effect.intercept(54),
                Effect.slope(second),
                Effect.slope(third)),
            worker,
            Rest.same(2, 54));
    double[] spreads = LikeliestSpreads.of(model, LogPrior.NONE, new double[] {1, 1, 1}, PRECISION);
    Solved solved = model.at(spreads);
    assertThat(spreads[1]).isCloseTo(4.781049, Offset.offset(1e-4));
    assertThat(spreads[0]).isCloseTo(3.729536, Offset.offset(1e-4));
    assertThat(spreads[2]).isCloseTo(0.9615768, Offset.offset(1e-5));
    assertThat(solved.logLikelihood()).isCloseTo(-107.8438, Offset.offset(1e-4));
    assertThat(solved.sum(EffectSum.of(2, 0)).mean()).isCloseTo(52.356, Offset.offset(1e-3));
    assertThat(solved.sum(EffectSum.of(2, 0)).error()).isCloseTo(2.486, Offset.offset(1e-3));
    assertThat(solved.sum(EffectSum.of(3, 0)).mean()).isCloseTo(7.967, Offset.offset(1e-3));
    assertThat(solved.sum(EffectSum.of(4, 0)).mean()).isCloseTo(13.917, Offset.offset(1e-3));
    assertThat(solved.sum(EffectSum.of(4, 0)).error()).isCloseTo(2.177, Offset.offset(1e-3));
  }

  /** Whatever is made a block, and in whatever order rows come, the answer is the same. */
  @Test
  void neitherBlocksNorOrderMatter() {
    PublishedDesign design = PublishedDesign.of("ham");
    int[] product = PublishedDesign.levels(design.a);
    int[] consumer = PublishedDesign.levels(design.b);
    int[] both = PublishedDesign.levels(design.both());
    double[] spreads = {1.5, 0.7, 0.4, 1.3};
    List<Effect> effects =
        List.of(
            Effect.of(324, both, 0),
            Effect.of(81, consumer, 1),
            Effect.of(4, product, 2),
            Effect.intercept(both.length));
    Rest rest = Rest.same(3, both.length);
    Solved one = new MixedModel(design.y(), effects, consumer, rest).at(spreads);
    for (int[] blocks : List.of(product, new int[both.length])) {
      Solved other = new MixedModel(design.y(), effects, blocks, rest).at(spreads);
      EffectSum difference = EffectSum.of(2, 1).plus(EffectSum.of(2, 3), -1);
      assertThat(other.logLikelihood()).isCloseTo(one.logLikelihood(), Offset.offset(1e-8));
      assertThat(other.sum(difference).mean())
          .isCloseTo(one.sum(difference).mean(), Offset.offset(1e-9));
      assertThat(other.sum(difference).error())
          .isCloseTo(one.sum(difference).error(), Offset.offset(1e-9));
    }
  }

  private static double[] is(List<String> names, String name) {
    return names.stream().mapToDouble(each -> each.equals(name) ? 1 : 0).toArray();
  }

  private static Fit fit(
      PublishedDesign design,
      List<Effect> effects,
      int[] blocks,
      int spreads,
      Map<String, Double> expected) {
    MixedModel model =
        new MixedModel(design.y(), effects, blocks, Rest.same(spreads, blocks.length));
    double[] start = new double[spreads + 1];
    Arrays.fill(start, 1);
    double[] found = LikeliestSpreads.of(model, LogPrior.NONE, start, PRECISION);
    Fit fit = new Fit(found, model.at(found), expected);
    fit.isClose("REML criterion|", -2 * fit.solved.logLikelihood());
    return fit;
  }

  /** A fit beside what it should be: to 1e-4 of the value, or 1e-5. */
  private record Fit(double[] spreads, Solved solved, Map<String, Double> expected) {
    void isClose(String what, double value) {
      double right = expected.get(what);
      assertThat(value)
          .as(what)
          .isCloseTo(right, Offset.offset(Math.max(1e-5, 1e-4 * Math.abs(right))));
    }

    void variances(String... names) {
      for (int i = 0; i < names.length; i++) {
        isClose("variance|" + names[i], spreads[i] * spreads[i]);
      }
    }

    void fixed(String name, int effect) {
      SolvedSum sum = solved.sum(EffectSum.of(effect, 0));
      isClose("fixed|" + name, sum.mean());
      isClose("fixed standard error|" + name, sum.error());
    }

    void predictions(String name, int effect, List<String> levels) {
      PublishedDesign.numbered(levels)
          .forEach(
              (level, number) -> {
                SolvedSum sum = solved.sum(EffectSum.of(effect, number));
                isClose("prediction " + name + "|" + level, sum.mean());
                isClose("prediction standard error " + name + "|" + level, sum.conditionalError());
              });
    }
  }
}
