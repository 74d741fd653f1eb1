package rindward.controller.exchange;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Some thousand rows of a recording in time order, packed so that years of a logger fit into a
 * small board's memory: each value as its difference from the one before, in as few bytes as it
 * needs (7 bits a byte, the least first). Immutable.
 */
final class SampleBlock {
  /** A difference of 64 bits in sevens. */
  private static final int MOST_BYTES_A_VALUE = 10;

  private static final int VALUES = 3;

  private final byte[] packed;
  private final int count;
  private final long firstMillis;
  private final long lastMillis;

  private SampleBlock(byte[] packed, int count, long firstMillis, long lastMillis) {
    this.packed = packed;
    this.count = count;
    this.firstMillis = firstMillis;
    this.lastMillis = lastMillis;
  }

  /**
   * Packs rows; of those with equal times the last counts.
   *
   * @param rows in the order of the file, at least one; is sorted in place
   */
  static SampleBlock of(List<RecordedSample> rows) {
    rows.sort(Comparator.comparingLong(RecordedSample::atMillis));
    ByteBuffer buffer = ByteBuffer.allocate(rows.size() * VALUES * MOST_BYTES_A_VALUE);
    RecordedSample before = new RecordedSample(0, 0, 0);
    int count = 0;
    for (int i = 0; i < rows.size(); i++) {
      RecordedSample row = rows.get(i);
      if (i + 1 == rows.size() || rows.get(i + 1).atMillis() != row.atMillis()) {
        put(buffer, row.atMillis() - before.atMillis());
        put(buffer, (long) row.temperatureMilliC() - before.temperatureMilliC());
        put(buffer, (long) row.humidityMilliPct() - before.humidityMilliPct());
        before = row;
        count++;
      }
    }
    return new SampleBlock(
        Arrays.copyOf(buffer.array(), buffer.position()),
        count,
        rows.get(0).atMillis(),
        before.atMillis());
  }

  long firstMillis() {
    return firstMillis;
  }

  long lastMillis() {
    return lastMillis;
  }

  /** Begins to read. */
  Cursor open(int place) {
    return new Cursor(this, place);
  }

  private static void put(ByteBuffer buffer, long difference) {
    long left = (difference << 1) ^ (difference >> 63);
    while ((left & ~0x7FL) != 0) {
      buffer.put((byte) (left | 0x80));
      left >>>= 7;
    }
    buffer.put((byte) left);
  }

  /** Reads a block from its first row to its last. For one thread. */
  static final class Cursor {
    private final SampleBlock block;
    private final int place;
    private int at;
    private int left;
    private long atMillis;
    private long temperatureMilliC;
    private long humidityMilliPct;

    private Cursor(SampleBlock block, int place) {
      this.block = block;
      this.place = place;
      this.left = block.count;
      boolean unused = next();
    }

    /** Returns which block of the file this is. */
    int place() {
      return place;
    }

    long atMillis() {
      return atMillis;
    }

    int temperatureMilliC() {
      return (int) temperatureMilliC;
    }

    int humidityMilliPct() {
      return (int) humidityMilliPct;
    }

    /** Goes on to the next row; tells whether there is one. */
    boolean next() {
      if (left == 0) {
        return false;
      }
      left--;
      atMillis += difference();
      temperatureMilliC += difference();
      humidityMilliPct += difference();
      return true;
    }

    private long difference() {
      long value = 0;
      int shift = 0;
      byte piece;
      do {
        piece = block.packed[at++];
        value |= (piece & 0x7FL) << shift;
        shift += 7;
      } while (piece < 0);
      return (value >>> 1) ^ -(value & 1);
    }
  }
}
