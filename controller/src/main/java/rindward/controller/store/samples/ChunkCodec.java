package rindward.controller.store.samples;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import rindward.controller.ledger.Run;
import rindward.hardware.Thousandths;

/**
 * How runs of samples look on disk: less than two bytes a sample. All numbers are little-endian.
 *
 * <pre>
 * chunk = version (1 byte, now 2), run ...
 * run   = seconds from the chunk's first sample (4), seconds between samples (4), count (4),
 *         frames of temperatures, frames of humidities ({@link Frames})
 * </pre>
 *
 * Values are hundredths of a degree C or of a percent; -32768 stands for "not measured". Chunks of
 * version 1, which 0.1.0 wrote, are read for ever: there the values stood in two bytes each.
 */
final class ChunkCodec {
  private static final byte VERSION = 2;
  private static final byte TWO_BYTES_A_VALUE = 1;
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
    ByteArrayOutputStream chunk = new ByteArrayOutputStream();
    chunk.write(VERSION);
    for (Run run : runs) {
      ByteBuffer header = ByteBuffer.allocate(RUN_HEADER).order(ByteOrder.LITTLE_ENDIAN);
      header.putInt(Math.toIntExact(wholeSeconds(run.startMillis()) - firstSecond));
      header.putInt(run.count() == 1 ? 1 : (int) wholeSeconds(run.stepMillis()));
      header.putInt(run.count());
      chunk.writeBytes(header.array());
      Frames.put(chunk, hundredths(run.temperatureMilliC(), run.count()), run.count());
      Frames.put(chunk, hundredths(run.humidityMilliPct(), run.count()), run.count());
    }
    return chunk.toByteArray();
  }

  /**
   * Decodes what {@link #encode} makes and ever made.
   *
   * @throws IllegalArgumentException when the bytes are not a chunk
   */
  static List<Run> decode(long firstSecond, byte[] chunk) {
    byte version = chunk.length == 0 ? 0 : chunk[0];
    if (version != VERSION && version != TWO_BYTES_A_VALUE) {
      throw new IllegalArgumentException(
          "a chunk of samples began with "
              + (chunk.length == 0 ? "nothing" : String.valueOf(chunk[0]))
              + " but it must begin with "
              + TWO_BYTES_A_VALUE
              + " or "
              + VERSION);
    }
    ByteBuffer numbers = ByteBuffer.wrap(chunk).order(ByteOrder.LITTLE_ENDIAN);
    List<Run> runs = new ArrayList<>();
    int at = 1;
    while (at < chunk.length) {
      int left = chunk.length - at - RUN_HEADER;
      int count = left < 0 ? 0 : numbers.getInt(at + 8);
      if (count <= 0 || count > most(version, left)) {
        throw new IllegalArgumentException(
            "a chunk of samples told of " + count + " samples but had " + left + " bytes left");
      }
      long startMillis = 1000 * (firstSecond + numbers.getInt(at));
      int stepMillis = 1000 * Math.min(numbers.getInt(at + 4), Integer.MAX_VALUE / 1000);
      at += RUN_HEADER;
      int[] temperatures;
      int[] humidities;
      if (version == VERSION) {
        Frames frames = new Frames(chunk, at);
        temperatures = frames.take(count);
        humidities = frames.take(count);
        at = frames.at();
      } else {
        temperatures = take(chunk, at, count);
        humidities = take(chunk, at + 2 * count, count);
        at += 4 * count;
      }
      runs.add(new Run(startMillis, stepMillis, count, temperatures, humidities));
    }
    return runs;
  }

  /** Returns how many samples so many bytes can hold at most. */
  private static int most(byte version, int bytes) {
    return version == VERSION ? bytes / (2 * Frames.LEAST_BYTES) * Frames.LENGTH : bytes / 4;
  }

  private static short[] hundredths(int[] thousandths, int count) {
    short[] hundredths = new short[count];
    for (int i = 0; i < count; i++) {
      hundredths[i] = toHundredths(thousandths[i]);
    }
    return hundredths;
  }

  /** Reads values of version 1. */
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
