package rindward.controller.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where every unknown stands. Those of one block (a variety with its lots and fruits) meet those of
 * no other block, so each block is solved by itself, and only what runs across blocks (tasters,
 * sessions, free terms, the response) is solved together: the border.
 */
final class Layout {
  /** Of unknowns that stand in the border. */
  static final int BORDER = -1;

  /** Block of every unknown. */
  final int[] block;

  /** Place of every unknown within its block, or within the border. */
  final int[] place;

  /** How many unknowns every block holds. */
  final int[] sizes;

  /** Which spread every unknown is drawn with; {@link Effect#FIXED} if it is free. */
  final int[] spread;

  /** How many unknowns of the border are drawn, and how many are free. */
  final int drawn;

  final int free;

  private final int[] firstOfEffect;

  /**
   * Lays out the unknowns.
   *
   * @param blockOfRow in which block each row lies
   */
  Layout(List<Effect> effects, int[] blockOfRow, int blocks) {
    firstOfEffect = new int[effects.size()];
    int count = 0;
    for (int e = 0; e < effects.size(); e++) {
      firstOfEffect[e] = count;
      count += effects.get(e).levels();
    }
    block = new int[count];
    place = new int[count];
    spread = new int[count];
    sizes = new int[blocks];
    List<Integer> bordering = new ArrayList<>();
    List<Integer> fixed = new ArrayList<>();
    for (int e = 0; e < effects.size(); e++) {
      int[] within = blocksOf(effects.get(e), blockOfRow);
      for (int level = 0; level < within.length; level++) {
        int unknown = firstOfEffect[e] + level;
        block[unknown] = within[level];
        spread[unknown] = effects.get(e).spread();
        if (within[level] != BORDER) {
          place[unknown] = sizes[within[level]]++;
        } else if (effects.get(e).isFixed()) {
          fixed.add(unknown);
        } else {
          bordering.add(unknown);
        }
      }
    }
    drawn = bordering.size();
    free = fixed.size();
    bordering.addAll(fixed);
    for (int i = 0; i < bordering.size(); i++) {
      place[bordering.get(i)] = i;
    }
  }

  /** Returns the block of every level, if the whole effect keeps to blocks; else all border. */
  private static int[] blocksOf(Effect effect, int[] blockOfRow) {
    int[] within = new int[effect.levels()];
    Arrays.fill(within, BORDER);
    if (effect.isFixed()) {
      return within;
    }
    int[] none = within.clone();
    for (int row = 0; row < blockOfRow.length; row++) {
      if (effect.isIn(row)) {
        int level = effect.levelOfRow()[row];
        if (within[level] != BORDER && within[level] != blockOfRow[row]) {
          return none;
        }
        within[level] = blockOfRow[row];
      }
    }
    return within;
  }

  int unknown(int effect, int level) {
    return firstOfEffect[effect] + level;
  }

  /** Returns the place of the response, which is the border's last. */
  int response() {
    return drawn + free;
  }
}
