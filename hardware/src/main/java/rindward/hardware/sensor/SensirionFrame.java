package rindward.hardware.sensor;

import java.io.IOException;
import java.util.Locale;

/**
 * One measurement as the SHT3x and SHT4x families send it: a word of temperature and a word of
 * humidity, each with its own checksum.
 *
 * @param temperatureTicks 0..65535; {@link ShtFamily} says what it means
 * @param humidityTicks 0..65535
 */
public record SensirionFrame(int temperatureTicks, int humidityTicks) {
  /** Bytes in a frame. */
  public static final int BYTES = 6;

  private static final int WORD_AND_CRC = 3;

  /**
   * Reads a frame.
   *
   * @throws IOException when its length or the checksum of a word is wrong
   */
  public static SensirionFrame parse(byte[] bytes) throws IOException {
    if (bytes.length != BYTES) {
      throw new IOException("its answer had " + bytes.length + " bytes but it must have " + BYTES);
    }
    return new SensirionFrame(word("temperature", bytes, 0), word("humidity", bytes, WORD_AND_CRC));
  }

  /**
   * Returns the word that begins at {@code from} and is followed by its checksum.
   *
   * @param what what the word says, for the sentence
   * @throws IOException when the checksum is wrong
   */
  static int word(String what, byte[] bytes, int from) throws IOException {
    int expected = Crc8.sensirion(bytes, from, 2);
    int sent = bytes[from + 2] & 0xFF;
    if (sent != expected) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "the checksum of its %s was 0x%02X but it must be 0x%02X; check the wire",
              what,
              sent,
              expected));
    }
    return (bytes[from] & 0xFF) << 8 | (bytes[from + 1] & 0xFF);
  }
}
