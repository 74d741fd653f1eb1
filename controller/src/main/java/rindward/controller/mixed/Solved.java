package rindward.controller.mixed;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;

/**
 * The model for given spreads: its likelihood, and what it says of any sum of effects. Unknowns are
 * solved in units of their spread (Bates, Maechler, Bolker, Walker 2015, J. Stat. Softw. 67(1),
 * section 3), so that a spread of zero is a spread like any other.
 */
public final class Solved {
  private final Layout layout;
  private final Products products;
  private final double[] scales;
  private final double[][] lower;
  private final double[][] across;
  private final double[] border;
  private final double logLikelihood;

  Solved(MixedModel model, double[] spreads) {
    this.layout = model.layout;
    this.products = model.products;
    this.scales = new double[layout.spread.length];
    for (int u = 0; u < scales.length; u++) {
      scales[u] = layout.spread[u] < 0 ? 1 : spreads[layout.spread[u]];
    }
    double[] variances = model.rest.variances(spreads);
    double twice = (model.rowsOfKind[0]) * Math.log(variances[0]);
    int rows = model.rowsOfKind[0];
    if (variances.length > 1) {
      twice += model.rowsOfKind[1] * Math.log(variances[1]);
      rows += model.rowsOfKind[1];
    }
    int width = layout.response() + 1;
    double[] scaleOfBorder = new double[width];
    double[][] scaleWithin = new double[layout.sizes.length][];
    for (int b = 0; b < scaleWithin.length; b++) {
      scaleWithin[b] = new double[layout.sizes[b]];
    }
    scaleOfBorder[width - 1] = 1;
    for (int u = 0; u < scales.length; u++) {
      if (layout.block[u] == Layout.BORDER) {
        scaleOfBorder[layout.place[u]] = scales[u];
      } else {
        scaleWithin[layout.block[u]][layout.place[u]] = scales[u];
      }
    }
    border = new double[width * width];
    scale(border, scaleOfBorder, width, products.border, variances);
    for (int i = 0; i < layout.drawn; i++) {
      border[i * width + i] += 1;
    }
    lower = new double[layout.sizes.length][];
    across = new double[layout.sizes.length][];
    for (int b = 0; b < lower.length; b++) {
      twice += eliminate(b, scaleWithin[b], scaleOfBorder, variances);
    }
    twice += factorBorder(width);
    twice += border[width * width - 1] + (rows - layout.free) * Math.log(2 * Math.PI);
    logLikelihood = -twice / 2;
  }

  /** Returns the logarithm of the likelihood of the spreads, free terms integrated out (REML). */
  public double logLikelihood() {
    return logLikelihood;
  }

  /** Makes one sum of effects ready to be asked about. */
  public SolvedSum sum(EffectSum sum) {
    int width = layout.response() + 1;
    double[][] inner = new double[layout.sizes.length][];
    double[] outer = new double[width];
    sum.forEach(
        (effect, level, times) -> {
          int u = layout.unknown(effect, level);
          double value = times * scales[u];
          if (layout.block[u] == Layout.BORDER) {
            outer[layout.place[u]] += value;
          } else {
            double[] own = inner[layout.block[u]];
            if (own == null) {
              own = new double[layout.sizes[layout.block[u]]];
              inner[layout.block[u]] = own;
            }
            own[layout.place[u]] += value;
          }
        });
    double mean = 0;
    double variance = 0;
    for (int b = 0; b < inner.length; b++) {
      double[] own = inner[b];
      if (own != null) {
        TriangularSolver_DDRM.solveL(lower[b], own, own.length);
        int[] met = products.met[b];
        for (int i = 0; i < own.length; i++) {
          variance += own[i] * own[i];
          for (int j = 0; j < met.length; j++) {
            outer[met[j]] -= across[b][i * met.length + j] * own[i];
          }
        }
      }
    }
    // What the loop took off the response's place is what the blocks add to the mean.
    mean -= outer[width - 1];
    double conditional = variance;
    for (int i = 0; i < width - 1; i++) {
      double value = outer[i];
      for (int j = 0; j < i; j++) {
        value -= border[i * width + j] * outer[j];
      }
      outer[i] = value / border[i * width + i];
      mean += outer[i] * border[(width - 1) * width + i];
      variance += outer[i] * outer[i];
      if (i < layout.drawn) {
        conditional = variance;
      }
    }
    return new SolvedSum(mean, Math.sqrt(variance), Math.sqrt(conditional));
  }

  /** Solves one block and takes what it explains off the border; returns 2 log of its factor. */
  private double eliminate(int b, double[] own, double[] scaleOfBorder, double[] variances) {
    int size = own.length;
    int[] met = products.met[b];
    double[] matrix = new double[size * size];
    double[][] ofBlock = new double[variances.length][];
    for (int kind = 0; kind < variances.length; kind++) {
      ofBlock[kind] = products.within[kind][b];
    }
    scale(matrix, own, size, ofBlock, variances);
    for (int i = 0; i < size; i++) {
      matrix[i * size + i] += 1;
    }
    factor(matrix, size);
    double[] beside = new double[size * met.length];
    for (int kind = 0; kind < variances.length; kind++) {
      double[] raw = products.across[kind][b];
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < met.length; j++) {
          beside[i * met.length + j] +=
              raw[i * met.length + j] * own[i] * scaleOfBorder[met[j]] / variances[kind];
        }
      }
    }
    double twice = 0;
    int width = scaleOfBorder.length;
    for (int i = 0; i < size; i++) {
      int at = i * met.length;
      for (int k = 0; k < i; k++) {
        double times = matrix[i * size + k];
        if (times != 0) {
          for (int j = 0; j < met.length; j++) {
            beside[at + j] -= times * beside[k * met.length + j];
          }
        }
      }
      double pivot = matrix[i * size + i];
      twice += 2 * Math.log(pivot);
      for (int j = 0; j < met.length; j++) {
        beside[at + j] /= pivot;
      }
      for (int j = 0; j < met.length; j++) {
        double left = beside[at + j];
        int line = met[j] * width;
        for (int k = 0; k <= j; k++) {
          border[line + met[k]] -= left * beside[at + k];
        }
      }
    }
    lower[b] = matrix;
    across[b] = beside;
    return twice;
  }

  /**
   * Solves the border and leaves the response's row solved too, with the sum of squares that no
   * effect explains as its last number (zero where there is not more data than free terms); returns
   * 2 log of the factor.
   */
  private double factorBorder(int width) {
    int size = width - 1;
    double[] matrix = new double[size * size];
    for (int i = 0; i < size; i++) {
      System.arraycopy(border, i * width, matrix, i * size, i + 1);
    }
    factor(matrix, size);
    double twice = 0;
    for (int i = 0; i < size; i++) {
      System.arraycopy(matrix, i * size, border, i * width, i + 1);
      twice += 2 * Math.log(matrix[i * size + i]);
    }
    int response = size * width;
    double left = border[response + size];
    for (int i = 0; i < size; i++) {
      double value = border[response + i];
      for (int j = 0; j < i; j++) {
        value -= border[i * width + j] * border[response + j];
      }
      border[response + i] = value / border[i * width + i];
      left -= border[response + i] * border[response + i];
    }
    border[response + size] = Math.max(0, left);
    return twice;
  }

  private static void scale(
      double[] target, double[] scales, int size, double[][] products, double[] variances) {
    for (int kind = 0; kind < variances.length; kind++) {
      double[] raw = products[kind];
      for (int i = 0; i < size; i++) {
        double times = scales[i] / variances[kind];
        for (int j = 0; j <= i; j++) {
          target[i * size + j] += raw[i * size + j] * times * scales[j];
        }
      }
    }
  }

  /** Replaces the lower half of a matrix by its Cholesky factor. */
  private static void factor(double[] matrix, int size) {
    if (size == 0) {
      return;
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        matrix[j * size + i] = matrix[i * size + j];
      }
    }
    CholeskyDecompositionInner_DDRM cholesky = new CholeskyDecompositionInner_DDRM(true);
    if (!cholesky.decompose(DMatrixRMaj.wrap(size, size, matrix))) {
      Arrays.fill(matrix, Double.NaN);
    }
  }
}
