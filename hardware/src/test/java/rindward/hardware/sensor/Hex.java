package rindward.hardware.sensor;

import java.util.HexFormat;

/** Bytes as the data sheets print them. */
public final class Hex {
  private Hex() {}

  /** Returns the bytes that the digits stand for; blanks between them do not matter. */
  public static byte[] bytes(String digits) {
    return HexFormat.of().parseHex(digits.replace(" ", ""));
  }
}
