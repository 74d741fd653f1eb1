package rindward.controller.store;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
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
  private static final VarHandle SHORT =
      MethodHandles.byteArrayViewVarHandle(short[].class, ByteOrder.LITTLE_ENDIAN);
  private static final VarHandle INT =
      MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);

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
    byte[] chunk = new byte[size];
    chunk[0] = VERSION;
    int at = 1;
    for (Run run : runs) {
      INT.set(chunk, at, Math.toIntExact(wholeSeconds(run.startMillis()) - firstSecond));
      INT.set(chunk, at + 4, run.count() == 1 ? 1 : (int) wholeSeconds(run.stepMillis()));
      INT.set(chunk, at + 8, run.count());
      at = putAll(chunk, at + RUN_HEADER, run.temperatureMilliC(), run.count());
      at = putAll(chunk, at, run.humidityMilliPct(), run.count());
    }
    return chunk;
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
    List<Run> runs = new ArrayList<>();
    int at = 1;
    while (at < chunk.length) {
      int left = chunk.length - at - RUN_HEADER;
      int count = left < 0 ? 0 : (int) INT.get(chunk, at + 8);
      if (count <= 0 || count > left / 4) {
        throw new IllegalArgumentException(
            "a chunk of samples told of " + count + " samples but had " + left + " bytes left");
      }
      long startMillis = 1000 * (firstSecond + (int) INT.get(chunk, at));
      int stepMillis = 1000 * Math.min((int) INT.get(chunk, at + 4), Integer.MAX_VALUE / 1000);
      int[] temperatures = take(chunk, at + RUN_HEADER, count);
      int[] humidities = take(chunk, at + RUN_HEADER + 2 * count, count);
      runs.add(new Run(startMillis, stepMillis, count, temperatures, humidities));
      at += RUN_HEADER + 4 * count;
    }
    return runs;
  }

  private static int putAll(byte[] chunk, int at, int[] thousandths, int count) {
    for (int i = 0; i < count; i++) {
      SHORT.set(chunk, at + 2 * i, toHundredths(thousandths[i]));
    }
    return at + 2 * count;
  }

  private static int[] take(byte[] chunk, int at, int count) {
    int[] thousandths = new int[count];
    for (int i = 0; i < count; i++) {
      short hundredths = (short) SHORT.get(chunk, at + 2 * i);
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
