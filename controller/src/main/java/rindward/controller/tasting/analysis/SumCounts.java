package rindward.controller.tasting.analysis;

/**
 * How many arrangements lead to each set of rank sums, whichever sample has which. A set is packed
 * into one long, a byte for each sample, and counted in an open table without a box for either. Not
 * thread-safe.
 */
final class SumCounts {
  /** Most samples that can be packed. */
  static final int MOST_SAMPLES = Long.BYTES;

  /** Highest sum that can be packed; the lowest is one. */
  static final int HIGHEST_SUM = 255;

  private final int samples;
  private long[] keys = new long[1 << 10];
  private long[] counts = new long[1 << 10];
  private int size;

  SumCounts(int samples) {
    this.samples = samples;
  }

  /** Is shown one set of sums, from the lowest, and how many arrangements lead to it. */
  interface Visitor {
    /** Must not keep the array, which the next set will overwrite. */
    void visit(int[] sums, long count);
  }

  /** Adds {@code count}, above zero, to a set of sums; sorts the array it is given. */
  void add(int[] sums, long count) {
    if (2 * size >= keys.length) {
      grow();
    }
    put(packed(sums), count);
  }

  /** Returns how many different sets of sums there are. */
  int size() {
    return size;
  }

  void forEach(Visitor visitor) {
    int[] sums = new int[samples];
    for (int i = 0; i < keys.length; i++) {
      if (counts[i] != 0) {
        for (int sample = 0; sample < samples; sample++) {
          sums[sample] = (int) (keys[i] >>> Byte.SIZE * sample) & HIGHEST_SUM;
        }
        visitor.visit(sums, counts[i]);
      }
    }
  }

  /** Sorts by insertion, as there are few, and packs, the highest in front. */
  private static long packed(int[] sums) {
    for (int i = 1; i < sums.length; i++) {
      int sum = sums[i];
      int j = i;
      while (j > 0 && sums[j - 1] > sum) {
        sums[j] = sums[j - 1];
        j--;
      }
      sums[j] = sum;
    }
    long key = 0;
    for (int i = sums.length - 1; i >= 0; i--) {
      key = key << Byte.SIZE | sums[i];
    }
    return key;
  }

  private void put(long key, long count) {
    int mask = keys.length - 1;
    // Multiplying by 2^64 over the golden ratio spreads keys that differ in few bits (Knuth).
    int place = (int) (key * 0x9E3779B97F4A7C15L >>> 32) & mask;
    while (counts[place] != 0 && keys[place] != key) {
      place = (place + 1) & mask;
    }
    if (counts[place] == 0) {
      keys[place] = key;
      size++;
    }
    counts[place] += count;
  }

  private void grow() {
    long[] oldKeys = keys;
    long[] oldCounts = counts;
    keys = new long[2 * oldKeys.length];
    counts = new long[keys.length];
    size = 0;
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldCounts[i] != 0) {
        put(oldKeys[i], oldCounts[i]);
      }
    }
  }
}
