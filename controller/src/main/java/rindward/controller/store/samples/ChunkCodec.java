package rindward.controller.store.samples;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import rindward.controller.ledger.Run;
import rindward.hardware.Thousandths;

/**
 * How runs of samples look on disk: about four bytes a sample. All numbers are little-endian.
 *
 * <pre>
 * chunk = version (1 byte, now 1), run ...
 * run   = seconds from the chunk's first sample (4), seconds between samples (4), count (4),
 *         count temperatures (2 each), count humidities (2 each)
 * </pre>
 *
 * Values are hundredths of a degree C or of a percent; -32768 stands for "not measured".
 */
final class ChunkCodec {
  private static final byte VERSION = 1;
  private static final int RUN_HEADER = 12;

  private ChunkCodec() {}

  /**
   * Returns the value in thousandths that disk gives back for {@code thousandths}: rounded to
   * hundredths, halves up; {@link Thousandths#NONE} for one beyond what 16 bits hold (+-327.67),
   * which no air can have.
   */
  static int asKept(int thousandths) {
    short kept = toHundredths(thousandths);
    return kept == Short.MIN_VALUE ? Thousandths.NONE : kept * 10;
  }

  /**
   * Encodes runs that start at whole seconds, at or after {@code firstSecond}, with steps of whole
   * seconds; a lone sample's step does not matter.
   */
  static byte[] encode(long firstSecond, List<Run> runs) {
    int size = 1;
    for (Run run : runs) {
      size = Math.addExact(size, RUN_HEADER + 4 * run.count());
    }
    ByteBuffer chunk = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    chunk.put(VERSION);
    for (Run run : runs) {
      chunk.putInt(Math.toIntExact(wholeSeconds(run.startMillis()) - firstSecond));
      chunk.putInt(run.count() == 1 ? 1 : (int) wholeSeconds(run.stepMillis()));
      chunk.putInt(run.count());
      putAll(chunk, run.temperatureMilliC(), run.count());
      putAll(chunk, run.humidityMilliPct(), run.count());
    }
    return chunk.array();
  }

  /**
   * Decodes what {@link #encode} made.
   *
   * @throws IllegalArgumentException when the bytes are not a chunk
   */
  static List<Run> decode(long firstSecond, byte[] chunk) {
    if (chunk.length == 0 || chunk[0] != VERSION) {
      throw new IllegalArgumentException(
          "a chunk of samples began with "
              + (chunk.length == 0 ? "nothing" : String.valueOf(chunk[0]))
              + " but it must begin with "
              + VERSION);
    }
    ByteBuffer numbers = ByteBuffer.wrap(chunk).order(ByteOrder.LITTLE_ENDIAN);
    List<Run> runs = new ArrayList<>();
    int at = 1;
    while (at < chunk.length) {
      int left = chunk.length - at - RUN_HEADER;
      int count = left < 0 ? 0 : numbers.getInt(at + 8);
      if (count <= 0 || count > left / 4) {
        throw new IllegalArgumentException(
            "a chunk of samples told of " + count + " samples but had " + left + " bytes left");
      }
      long startMillis = 1000 * (firstSecond + numbers.getInt(at));
      int stepMillis = 1000 * Math.min(numbers.getInt(at + 4), Integer.MAX_VALUE / 1000);
      int[] temperatures = take(chunk, at + RUN_HEADER, count);
      int[] humidities = take(chunk, at + RUN_HEADER + 2 * count, count);
      runs.add(new Run(startMillis, stepMillis, count, temperatures, humidities));
      at += RUN_HEADER + 4 * count;
    }
    return runs;
  }

  private static void putAll(ByteBuffer chunk, int[] thousandths, int count) {
    for (int i = 0; i < count; i++) {
      chunk.putShort(toHundredths(thousandths[i]));
    }
  }

  /** By hand rather than through a buffer: this loop is most of what a cold answer costs. */
  private static int[] take(byte[] chunk, int at, int count) {
    int[] thousandths = new int[count];
    for (int i = 0, low = at; i < count; i++, low += 2) {
      int hundredths = (chunk[low] & 0xff) | (chunk[low + 1] << 8);
      thousandths[i] = hundredths == Short.MIN_VALUE ? Thousandths.NONE : hundredths * 10;
    }
    return thousandths;
  }

  private static short toHundredths(int thousandths) {
    int hundredths = Math.floorDiv(thousandths + 5, 10);
    return Math.abs(hundredths) > Short.MAX_VALUE ? Short.MIN_VALUE : (short) hundredths;
  }

  private static long wholeSeconds(long millis) {
    if (Math.floorMod(millis, 1000) != 0) {
      throw new IllegalArgumentException(
          "a time to keep was " + millis + " ms but it must be whole seconds");
    }
    return Math.floorDiv(millis, 1000);
  }
}
