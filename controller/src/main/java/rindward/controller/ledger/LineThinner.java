package rindward.controller.ledger;

import java.util.Arrays;
import rindward.hardware.Thousandths;

/**
 * Keeps of each slot of time the lowest and the highest value, at their own instants and in their
 * own order, so that a line through them touches every extreme exactly. Of a slot with one value,
 * or only equal ones, one point stays.
 */
final class LineThinner {
  private long[] at = new long[256];
  private int[] value = new int[256];
  private int count;

  private boolean isEmpty = true;
  private long lowAt;
  private int low;
  private long highAt;
  private int high;

  /**
   * Takes the next values of the slot; the line breaks off where one is {@code Thousandths.NONE}.
   *
   * @param from index of the first of them
   * @param to index behind the last of them
   * @param fromMillis instant of the first
   */
  void values(int[] thousandths, int from, int to, long fromMillis, int stepMillis) {
    int i = from;
    while (i < to) {
      long atMillis = fromMillis + (long) stepMillis * (i - from);
      if (thousandths[i] == Thousandths.NONE) {
        breakOff(atMillis);
        i++;
      } else {
        if (isEmpty) {
          isEmpty = false;
          low = thousandths[i];
          high = low;
          lowAt = atMillis;
          highAt = atMillis;
        }
        i = extremes(thousandths, i, to, atMillis, stepMillis);
      }
    }
  }

  /** Goes on until the line breaks off, and returns where: a season has a million values. */
  private int extremes(int[] thousandths, int from, int to, long fromMillis, int stepMillis) {
    int least = low;
    int most = high;
    int leastIndex = -1;
    int mostIndex = -1;
    int i = from;
    for (; i < to; i++) {
      int value = thousandths[i];
      if (value < least) {
        if (value == Thousandths.NONE) {
          break;
        }
        least = value;
        leastIndex = i;
      } else if (value > most) {
        most = value;
        mostIndex = i;
      }
    }
    if (leastIndex >= 0) {
      low = least;
      lowAt = fromMillis + (long) stepMillis * (leastIndex - from);
    }
    if (mostIndex >= 0) {
      high = most;
      highAt = fromMillis + (long) stepMillis * (mostIndex - from);
    }
    return i;
  }

  /** Ends the slot. */
  void endSlot() {
    if (isEmpty) {
      return;
    }
    isEmpty = true;
    if (low == high) {
      add(lowAt, low);
    } else if (lowAt < highAt) {
      add(lowAt, low);
      add(highAt, high);
    } else {
      add(highAt, high);
      add(lowAt, low);
    }
  }

  /** Breaks the line off: from this instant on nothing is known. Said twice, it counts once. */
  void breakOff(long atMillis) {
    endSlot();
    if (count > 0 && value[count - 1] != Thousandths.NONE) {
      add(atMillis, Thousandths.NONE);
    }
  }

  CurveLine line() {
    endSlot();
    return new CurveLine(Arrays.copyOf(at, count), Arrays.copyOf(value, count));
  }

  private void add(long atMillis, int thousandths) {
    if (count == at.length) {
      at = Arrays.copyOf(at, 2 * count);
      value = Arrays.copyOf(value, 2 * count);
    }
    at[count] = atMillis;
    value[count] = thousandths;
    count++;
  }
}
