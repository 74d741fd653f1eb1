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

  /** Takes the next value of the slot. */
  void value(long atMillis, int thousandths) {
    if (isEmpty) {
      isEmpty = false;
      low = thousandths;
      high = thousandths;
      lowAt = atMillis;
      highAt = atMillis;
    } else if (thousandths < low) {
      low = thousandths;
      lowAt = atMillis;
    } else if (thousandths > high) {
      high = thousandths;
      highAt = atMillis;
    }
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

  Line line() {
    endSlot();
    return new Line(Arrays.copyOf(at, count), Arrays.copyOf(value, count));
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
