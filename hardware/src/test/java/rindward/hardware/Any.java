package rindward.hardware;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * What one case of a {@link Seeded} property draws. The ends of a range, zero, and what lies beside
 * them come far more often than by chance, in one case of eight half the time: that is where
 * arithmetic goes wrong.
 */
public final class Any {
  private static final long[] EDGES = {0, 1, -1, Long.MIN_VALUE, Long.MAX_VALUE};
  private static final int[] BYTE_EDGES = {0, 1, 0x7F, 0x80, 0xFF};
  private static final int LONGEST_STORY = 4_000;

  private final SplittableRandom random;
  private final double edgeShare;
  private final StringBuilder story = new StringBuilder();

  Any(long seed) {
    random = new SplittableRandom(seed);
    edgeShare = random.nextInt(8) == 0 ? 0.5 : 0.15;
  }

  /** Returns a whole number from least to most, both included. */
  public int intBetween(int least, int most) {
    return (int) longBetween(least, most);
  }

  /** Returns a whole number from least to most, both included and less than 2^62 apart. */
  public long longBetween(long least, long most) {
    long width = Math.subtractExact(most, least);
    long value = least + random.nextLong(Math.addExact(width, 1));
    if (isEdge()) {
      int bits = Long.SIZE - Long.numberOfLeadingZeros(width);
      long near = 1L << random.nextInt(bits + 1);
      long away = random.nextBoolean() ? random.nextInt(2) : random.nextLong(near);
      value = edge(least, most);
      value += value == least || value != most && random.nextBoolean() ? away : -away;
      value = Math.min(most, Math.max(least, value));
    }
    return told(value);
  }

  /** Returns any long there is. */
  public long anyLong() {
    return told(isEdge() ? EDGES[random.nextInt(EDGES.length)] : random.nextLong());
  }

  /** Returns a number from least to most, both included; every second one in whole hundredths. */
  public double doubleBetween(double least, double most) {
    double value = least + random.nextDouble() * (most - least);
    if (isEdge()) {
      double away = random.nextBoolean() ? 0 : Math.pow(10, 3 * random.nextDouble() - 3);
      value =
          switch (random.nextInt(3)) {
            case 0 -> least + away;
            case 1 -> most - away;
            default -> random.nextBoolean() ? away : -away;
          };
    }
    if (random.nextBoolean()) {
      value = Math.rint(value * 100) / 100;
    }
    return told(Math.min(most, Math.max(least, value)));
  }

  /** Returns true or false. */
  public boolean yesOrNo() {
    return told(random.nextBoolean());
  }

  /** Returns true in one case of so many. */
  public boolean oneIn(int cases) {
    return told(random.nextInt(cases) == 0);
  }

  /** Returns one of these, each as often as the others. */
  @SafeVarargs
  public final <T> T of(T... values) {
    return told(values[random.nextInt(values.length)]);
  }

  /** Returns this many bytes. */
  public byte[] bytes(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    for (int i = 0; i < count; i++) {
      if (isEdge()) {
        bytes[i] = (byte) BYTE_EDGES[random.nextInt(BYTE_EDGES.length)];
      }
    }
    told(HexFormat.of().formatHex(bytes));
    return bytes;
  }

  /** Returns a list of at least the fewest and at most the most, each drawn in turn. */
  public <T> List<T> list(int fewest, int most, Supplier<T> next) {
    int size = intBetween(fewest, most);
    List<T> list = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      list.add(next.get());
    }
    return list;
  }

  private boolean isEdge() {
    return random.nextDouble() < edgeShare;
  }

  private long edge(long least, long most) {
    boolean isZero = least < 0 && 0 < most && random.nextInt(3) == 0;
    return isZero ? 0 : random.nextBoolean() ? least : most;
  }

  private <T> T told(T value) {
    if (story.length() < LONGEST_STORY) {
      story.append(story.length() == 0 ? "" : ", ").append(value);
    }
    return value;
  }

  /** Returns what was drawn so far, in its order. */
  @Override
  public String toString() {
    return story.length() == 0 ? "nothing" : story.toString();
  }
}
