package rindward.hardware.sensor;

import java.io.IOException;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Linux kernel writes about one reading of a DS18B20 in the file {@code w1_slave}: twice
 * the nine bytes of its scratchpad, the kernel's word on the checksum, and thousandths of a degree
 * (kernel documentation, w1/slaves/w1_therm).
 *
 * @param temperatureMilliC as the kernel computed it, not yet judged
 */
public record W1SlaveText(int temperatureMilliC) {
  private static final int SCRATCHPAD_BYTES = 9;
  private static final String NINE_BYTES = "((?:[0-9a-f]{2} ){" + SCRATCHPAD_BYTES + "})";
  private static final Pattern FIRST = Pattern.compile(NINE_BYTES + ": crc=[0-9a-f]{2} (YES|NO)");
  private static final Pattern SECOND = Pattern.compile(NINE_BYTES + "t=(-?[0-9]{1,6})");

  /**
   * Reads the text.
   *
   * @throws IOException when it is not such a text, when the checksum is wrong (the second line is
   *     then an old one), or when the whole scratchpad is zero
   */
  public static W1SlaveText parse(String text) throws IOException {
    List<String> lines = text.lines().map(String::strip).toList();
    if (lines.isEmpty()) {
      throw new IOException("it gave no text; it may be busy");
    }
    Matcher first = FIRST.matcher(lines.get(0));
    Matcher second = SECOND.matcher(lines.size() > 1 ? lines.get(1) : "");
    if (!first.matches() || !second.matches()) {
      throw new IOException(
          "its text was '" + String.join(" | ", lines) + "' but it must be that of a DS18B20");
    }
    byte[] scratchpad = HexFormat.ofDelimiter(" ").parseHex(first.group(1).strip());
    if (first.group(2).equals("NO") || Crc8.oneWire(scratchpad, 0, SCRATCHPAD_BYTES) != 0) {
      throw new IOException("the checksum of its answer was wrong; check the wire");
    }
    if (isAllZero(scratchpad)) {
      throw new IOException("its answer was nothing but zeros; its data wire is held low");
    }
    if (!first.group(1).equals(second.group(1))) {
      throw new IOException("the temperature in its text belongs to an earlier answer");
    }
    return new W1SlaveText(Integer.parseInt(second.group(2)));
  }

  private static boolean isAllZero(byte[] bytes) {
    for (byte b : bytes) {
      if (b != 0) {
        return false;
      }
    }
    return true;
  }
}
