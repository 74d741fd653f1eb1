package rindward.controller.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Instants counted from 1970 in UTC. */
enum EpochTime implements TimeFormat {
  MILLIS(0, "milliseconds since 1970, such as 1790000000000"),
  SECONDS(3, "seconds since 1970, such as 1790000000 or 1790000000.25");

  private final int digitsToMillis;
  private final String expected;

  EpochTime(int digitsToMillis, String expected) {
    this.digitsToMillis = digitsToMillis;
    this.expected = expected;
  }

  @Override
  public long toMillis(String text, long previousMillis) {
    BigDecimal count = new BigDecimal(text.replace(',', '.'));
    if (count.precision() - count.scale() > 18) {
      throw new NumberFormatException("too large");
    }
    return count.movePointRight(digitsToMillis).setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  @Override
  public String expected() {
    return expected;
  }
}
