package rindward.controller.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sums of products of the model's columns, which hold everything that the data say; one set for
 * each kind of row.
 */
final class Products {
  /** [kind][block][row by row of the block's unknowns]. */
  final double[][][] within;

  /** [kind][block][unknown of the block x border place that the block meets]. */
  final double[][][] across;

  /** [kind][border x border], the response last. */
  final double[][] border;

  /** Border places that each block meets, ascending. */
  final int[][] met;

  private final Layout layout;
  private final List<List<Entry>> entries = new ArrayList<>();
  private final boolean[][] meets;

  /** One product across: an unknown of a block beside a place of the border. */
  private record Entry(int kind, int inner, int place, double product) {}

  Products(Layout layout, int kinds) {
    this.layout = layout;
    int blocks = layout.sizes.length;
    int width = layout.response() + 1;
    within = new double[kinds][blocks][];
    across = new double[kinds][blocks][];
    border = new double[kinds][width * width];
    met = new int[blocks][];
    meets = new boolean[blocks][width];
    for (int b = 0; b < blocks; b++) {
      entries.add(new ArrayList<>());
      for (int kind = 0; kind < kinds; kind++) {
        within[kind][b] = new double[layout.sizes[b] * layout.sizes[b]];
      }
    }
  }

  void add(List<Effect> effects, int row, int block, double response, int kind) {
    int width = layout.response() + 1;
    int size = layout.sizes[block];
    int[] inner = new int[effects.size()];
    double[] innerWeight = new double[effects.size()];
    int[] outer = new int[effects.size() + 1];
    double[] outerWeight = new double[effects.size() + 1];
    int inners = 0;
    int outers = 0;
    for (int e = 0; e < effects.size(); e++) {
      Effect effect = effects.get(e);
      if (effect.isIn(row)) {
        int unknown = layout.unknown(e, effect.levelOfRow()[row]);
        if (layout.block[unknown] == Layout.BORDER) {
          outer[outers] = layout.place[unknown];
          outerWeight[outers++] = effect.weightOfRow()[row];
        } else {
          inner[inners] = layout.place[unknown];
          innerWeight[inners++] = effect.weightOfRow()[row];
        }
      }
    }
    outer[outers] = layout.response();
    outerWeight[outers++] = response;
    for (int i = 0; i < inners; i++) {
      for (int j = 0; j < inners; j++) {
        within[kind][block][inner[i] * size + inner[j]] += innerWeight[i] * innerWeight[j];
      }
      for (int j = 0; j < outers; j++) {
        meets[block][outer[j]] = true;
        entries
            .get(block)
            .add(new Entry(kind, inner[i], outer[j], innerWeight[i] * outerWeight[j]));
      }
    }
    for (int i = 0; i < outers; i++) {
      for (int j = 0; j < outers; j++) {
        border[kind][outer[i] * width + outer[j]] += outerWeight[i] * outerWeight[j];
      }
    }
  }

  /** Packs what runs across once all rows are in. */
  void finish() {
    for (int b = 0; b < met.length; b++) {
      int width = 0;
      int[] column = new int[meets[b].length];
      int[] places = new int[meets[b].length];
      for (int place = 0; place < column.length; place++) {
        if (meets[b][place]) {
          column[place] = width;
          places[width++] = place;
        }
      }
      met[b] = Arrays.copyOf(places, width);
      for (int kind = 0; kind < across.length; kind++) {
        across[kind][b] = new double[layout.sizes[b] * width];
      }
      for (Entry entry : entries.get(b)) {
        across[entry.kind()][b][entry.inner() * width + column[entry.place()]] += entry.product();
      }
    }
    entries.clear();
  }
}
