package rindward.controller.mixed;

import java.util.Arrays;
import java.util.List;

/**
 * A response and the effects that it is the sum of, made ready to be solved for any spreads. Made
 * once a data set; immutable then, and safe to share.
 */
public final class MixedModel {
  final Layout layout;
  final Rest rest;
  final Products products;
  final int[] rowsOfKind;

  /**
   * Makes a model.
   *
   * @param response of every row
   * @param effects all of them
   * @param blockOfRow in which block each row lies, from 0: of one effect that many others lie
   *     within; it decides how fast the answer comes, never what it is
   */
  public MixedModel(double[] response, List<Effect> effects, int[] blockOfRow, Rest rest) {
    int blocks = 1 + Arrays.stream(blockOfRow).max().orElse(-1);
    this.layout = new Layout(effects, blockOfRow, blocks);
    this.rest = rest;
    this.products = new Products(layout, rest.kinds());
    this.rowsOfKind = new int[rest.kinds()];
    for (int row = 0; row < response.length; row++) {
      rowsOfKind[rest.kindOf(row)]++;
      products.add(effects, row, blockOfRow[row], response[row], rest.kindOf(row));
    }
    products.finish();
  }

  /**
   * Solves the model.
   *
   * @param spreads standard deviations, in the order in which effects and rest name them; not
   *     negative, that of the rest above zero
   */
  public Solved at(double[] spreads) {
    return new Solved(this, spreads);
  }
}
