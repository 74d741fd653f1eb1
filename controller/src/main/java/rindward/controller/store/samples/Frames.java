package rindward.controller.store.samples;

import java.io.ByteArrayOutputStream;
import rindward.hardware.Thousandths;

/**
 * How the values of one quantity are packed: neighbours differ by hundredths, so they are kept in
 * frames of at most {@link #LENGTH}, each as its least value and, for each sample, how far it
 * stands above that, in as few bits as the greatest needs.
 *
 * <pre>
 * frame = head (1), least (2), [greatest - least (2), if the head has no room for it], codes
 * head  = greatest - least, or 127 if that stands behind the least; plus 128 if some are not measured
 * codes = value - least, plus one if some are not measured, for then 0 is one of those; the first
 *         in the lowest bits, filled up to whole bytes
 * </pre>
 *
 * Values are hundredths, little-endian. A frame in which nothing was measured is the head 128 and
 * the least -32768, without codes.
 */
final class Frames {
  static final int LENGTH = 32;

  /** Head and least: what the smallest frame takes. */
  static final int LEAST_BYTES = 3;

  private static final int UNMEASURED = Short.MIN_VALUE;
  private static final int SOME_UNMEASURED = 0x80;
  private static final int LONG_SPAN = 0x7f;

  private final byte[] chunk;
  private int at;

  /** Reads the frames of a chunk from a place on. */
  Frames(byte[] chunk, int at) {
    this.chunk = chunk;
    this.at = at;
  }

  /** Returns the place behind what was read. */
  int at() {
    return at;
  }

  /** Appends {@code count} values in hundredths, {@link Short#MIN_VALUE} for "not measured". */
  static void put(ByteArrayOutputStream chunk, short[] hundredths, int count) {
    for (int from = 0; from < count; from += LENGTH) {
      putFrame(chunk, hundredths, from, Math.min(from + LENGTH, count));
    }
  }

  private static void putFrame(ByteArrayOutputStream chunk, short[] hundredths, int from, int end) {
    int least = Short.MAX_VALUE;
    int greatest = UNMEASURED;
    int some = 0;
    for (int i = from; i < end; i++) {
      if (hundredths[i] == UNMEASURED) {
        some = SOME_UNMEASURED;
      } else {
        least = Math.min(least, hundredths[i]);
        greatest = Math.max(greatest, hundredths[i]);
      }
    }
    if (greatest == UNMEASURED) {
      chunk.write(SOME_UNMEASURED);
      putShort(chunk, UNMEASURED);
      return;
    }
    int span = greatest - least;
    chunk.write(some | Math.min(span, LONG_SPAN));
    putShort(chunk, least);
    if (span >= LONG_SPAN) {
      putShort(chunk, span);
    }
    int first = some == 0 ? 0 : 1;
    int bits = bits(span + first);
    int buffer = 0;
    int filled = 0;
    for (int i = from; i < end; i++) {
      int code = hundredths[i] == UNMEASURED ? 0 : hundredths[i] - least + first;
      buffer |= code << filled;
      for (filled += bits; filled >= 8; filled -= 8) {
        chunk.write(buffer);
        buffer >>>= 8;
      }
    }
    if (filled > 0) {
      chunk.write(buffer);
    }
  }

  /**
   * Reads {@code count} values, in thousandths.
   *
   * @throws IllegalArgumentException when the bytes end before they do
   */
  int[] take(int count) {
    int[] thousandths = new int[count];
    for (int from = 0; from < count; from += LENGTH) {
      takeFrame(thousandths, from, Math.min(from + LENGTH, count));
    }
    return thousandths;
  }

  private void takeFrame(int[] thousandths, int from, int end) {
    need(LEAST_BYTES);
    int head = chunk[at];
    int least = chunk[at + 1] & 0xff | chunk[at + 2] << 8;
    at += LEAST_BYTES;
    int span = head & LONG_SPAN;
    if (span == LONG_SPAN) {
      need(2);
      span = chunk[at] & 0xff | (chunk[at + 1] & 0xff) << 8;
      at += 2;
    }
    boolean isNothing = least == UNMEASURED;
    int first = head < 0 || isNothing ? 1 : 0;
    int bits = isNothing ? 0 : bits(span + first);
    if (bits > 16) {
      throw new IllegalArgumentException("a chunk of samples had a frame that spans " + span);
    }
    need((bits * (end - from) + 7) / 8);
    if (first == 0) {
      takeMeasured(thousandths, from, end, least * 10, bits);
    } else {
      takeSome(thousandths, from, end, least * 10, bits);
    }
  }

  /** By hand rather than through a buffer: this loop is much of what a cold answer costs. */
  private void takeMeasured(int[] thousandths, int from, int end, int least, int bits) {
    byte[] bytes = chunk;
    int next = at;
    int mask = (1 << bits) - 1;
    int buffer = 0;
    int held = 0;
    for (int i = from; i < end; i++) {
      while (held < bits) {
        buffer |= (bytes[next++] & 0xff) << held;
        held += 8;
      }
      thousandths[i] = least + (buffer & mask) * 10;
      buffer >>>= bits;
      held -= bits;
    }
    at = next;
  }

  private void takeSome(int[] thousandths, int from, int end, int least, int bits) {
    takeMeasured(thousandths, from, end, least - 10, bits);
    for (int i = from; i < end; i++) {
      if (thousandths[i] < least) {
        thousandths[i] = Thousandths.NONE;
      }
    }
  }

  private void need(int bytes) {
    if (bytes > chunk.length - at) {
      throw new IllegalArgumentException(
          "a chunk of samples had " + (chunk.length - at) + " bytes left but needs " + bytes);
    }
  }

  /** Returns how many bits the codes up to {@code greatest} take. */
  private static int bits(int greatest) {
    return Integer.SIZE - Integer.numberOfLeadingZeros(greatest);
  }

  private static void putShort(ByteArrayOutputStream chunk, int value) {
    chunk.write(value);
    chunk.write(value >> 8);
  }
}
