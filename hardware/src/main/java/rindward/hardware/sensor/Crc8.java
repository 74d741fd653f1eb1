package rindward.hardware.sensor;

/**
 * The two eight-bit checksums by which sensors show that a byte was lost on the wire. A long wire
 * in a shed beside a contactor does lose bytes.
 */
public final class Crc8 {
  private Crc8() {}

  /**
   * Returns the checksum that Sensirion sends after each 16-bit word: polynomial 0x31, initial
   * 0xFF, not reflected (data sheet SHT3x-DIS v5, section 4.12).
   *
   * @return 0..255
   */
  public static int sensirion(byte[] bytes, int from, int count) {
    int crc = 0xFF;
    for (int i = from; i < from + count; i++) {
      crc ^= bytes[i] & 0xFF;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 0x80) == 0 ? crc << 1 : crc << 1 ^ 0x31;
      }
      crc &= 0xFF;
    }
    return crc;
  }

  /**
   * Returns the checksum of the 1-Wire bus: x^8 + x^5 + x^4 + 1, initial 0, reflected (Maxim
   * Application Note 27). <b>Hazard:</b> of zeros it is zero, so a bus that is held low passes.
   *
   * @return 0..255
   */
  public static int oneWire(byte[] bytes, int from, int count) {
    int crc = 0;
    for (int i = from; i < from + count; i++) {
      crc ^= bytes[i] & 0xFF;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 1) == 0 ? crc >> 1 : crc >> 1 ^ 0x8C;
      }
    }
    return crc;
  }
}
