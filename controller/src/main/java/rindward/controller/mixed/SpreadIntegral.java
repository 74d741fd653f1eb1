package rindward.controller.mixed;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Spreads are never known: every answer is averaged over a fixed number of them, spread over where
 * prior and data put them and weighted by how likely each is (importance sampling on the scale of
 * logarithms, around the likeliest, at the points of a low-discrepancy sequence). Nothing is drawn
 * at random: the same data give the same answer.
 */
public final class SpreadIntegral {
  /** Made sixteen times as many, they move the chance of a variety in a season by a hundredth. */
  private static final int POINTS = 64;

  private static final double PRECISION = 0.05;
  private static final double STEP = 0.2;

  /** Wider than the curvature says, for the tail towards zero is longer. */
  private static final double WIDER = 1.15;

  private static final double LARGEST_DEVIATION = 1.2;
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private final MixedModel model;
  private final LogPrior prior;

  private SpreadIntegral(MixedModel model, LogPrior prior) {
    this.model = model;
    this.prior = prior;
  }

  /** Returns the spreads to average over, and their weights. */
  public static List<WeightedSpreads> of(MixedModel model, HalfT prior) {
    return of(model, prior, POINTS);
  }

  static List<WeightedSpreads> of(MixedModel model, HalfT prior, int points) {
    LogPrior onLogs = spreads -> prior.of(spreads) + sumOfLogs(spreads);
    double[] mode = LikeliestSpreads.of(model, onLogs, prior.start(), PRECISION);
    double[] centre = new double[mode.length];
    for (int i = 0; i < mode.length; i++) {
      centre[i] = Math.log(mode[i]);
    }
    return new SpreadIntegral(model, onLogs).around(centre, points);
  }

  private List<WeightedSpreads> around(double[] centre, int points) {
    int count = centre.length;
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(count, true, true);
    eigen.decompose(DMatrixRMaj.wrap(count, count, curvature(centre)));
    double[][] axes = new double[count][];
    for (int i = 0; i < count; i++) {
      double bend = Math.max(1e-9, eigen.getEigenvalue(i).getReal());
      double deviation = WIDER * Math.min(LARGEST_DEVIATION, 1 / Math.sqrt(bend));
      DMatrixRMaj vector = eigen.getEigenVector(i);
      axes[i] = new double[count];
      for (int j = 0; j < count; j++) {
        axes[i][j] = vector.get(j) * deviation;
      }
    }
    double[][] spreads = new double[points][];
    double[] logWeight = new double[points];
    double highest = Double.NEGATIVE_INFINITY;
    for (int p = 0; p < points; p++) {
      double[] logs = centre.clone();
      double[] even = evenly(p, points, count);
      for (int i = 0; i < count; i++) {
        double z = NORMAL.inverseCumulativeProbability(even[i]);
        logWeight[p] += z * z / 2;
        for (int j = 0; j < count; j++) {
          logs[j] += axes[i][j] * z;
        }
      }
      logWeight[p] += LikeliestSpreads.logDensity(model, prior, logs);
      spreads[p] = LikeliestSpreads.spreads(logs);
      highest = Math.max(highest, logWeight[p]);
    }
    double sum = 0;
    for (double each : logWeight) {
      sum += Math.exp(each - highest);
    }
    List<WeightedSpreads> weighted = new ArrayList<>();
    for (int p = 0; p < points; p++) {
      weighted.add(new WeightedSpreads(spreads[p], Math.exp(logWeight[p] - highest) / sum));
    }
    return weighted;
  }

  /** Minus the second derivatives of the logarithm of the density, by central differences. */
  private double[] curvature(double[] centre) {
    int count = centre.length;
    double here = LikeliestSpreads.logDensity(model, prior, centre);
    double[] up = new double[count];
    double[] down = new double[count];
    double[] curvature = new double[count * count];
    for (int i = 0; i < count; i++) {
      up[i] = moved(centre, i, STEP, i, 0);
      down[i] = moved(centre, i, -STEP, i, 0);
      curvature[i * count + i] = -(up[i] - 2 * here + down[i]) / (STEP * STEP);
      for (int j = 0; j < i; j++) {
        double both = moved(centre, i, STEP, j, STEP);
        double mixed = (both - up[i] - up[j] + here) / (STEP * STEP);
        curvature[i * count + j] = -mixed;
        curvature[j * count + i] = -mixed;
      }
    }
    return curvature;
  }

  private double moved(double[] centre, int i, double byI, int j, double byJ) {
    double[] logs = centre.clone();
    logs[i] += byI;
    logs[j] += byJ;
    return LikeliestSpreads.logDensity(model, prior, logs);
  }

  /** A point of the additive recurrence on the powers of the generalised golden ratio. */
  private static double[] evenly(int point, int points, int count) {
    double ratio = 2;
    for (int i = 0; i < 40; i++) {
      ratio = Math.pow(1 + ratio, 1.0 / (count + 1));
    }
    double[] even = new double[count];
    for (int i = 0; i < count; i++) {
      double place = (0.5 + (point + 1) * Math.pow(1 / ratio, i + 1.0)) % 1;
      even[i] = Math.min(1 - 0.25 / points, Math.max(0.25 / points, place));
    }
    return even;
  }

  private static double sumOfLogs(double[] spreads) {
    double sum = 0;
    for (double spread : spreads) {
      sum += Math.log(spread);
    }
    return sum;
  }
}
