package rindward.controller.tasting;

/**
 * How many arrangements lead to each set of rank sums: a table from a packed set of sums to a
 * count, without a box for either. Not thread-safe.
 */
final class SumCounts {
  private long[] keys = new long[1 << 10];
  private long[] counts = new long[1 << 10];
  private int size;

  /** Visits one set of sums and its count. */
  interface Visitor {
    void visit(long key, long count);
  }

  /** Adds {@code count}, above zero, to what stands beside {@code key}. */
  void add(long key, long count) {
    if (2 * size >= keys.length) {
      grow();
    }
    put(key, count);
  }

  /** Returns how many different sets of sums there are. */
  int size() {
    return size;
  }

  void forEach(Visitor visitor) {
    for (int i = 0; i < keys.length; i++) {
      if (counts[i] != 0) {
        visitor.visit(keys[i], counts[i]);
      }
    }
  }

  private void put(long key, long count) {
    int mask = keys.length - 1;
    long mixed = key * 0x9E3779B97F4A7C15L;
    int place = (int) (mixed >>> 32) & mask;
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
