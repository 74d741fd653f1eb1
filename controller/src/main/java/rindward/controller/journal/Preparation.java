package rindward.controller.journal;

import org.jspecify.annotations.Nullable;

/**
 * How all samples of a session are made ready: alike. Texts may be empty.
 *
 * @param method such as baked or steamed
 * @param temperatureC of oven or pan, degrees C
 * @param cut size and shape of the pieces
 * @param doneWhen how it is seen that a sample is done
 * @param servedAtC temperature at the table, degrees C
 * @param part of the fruit it is cut from
 * @param temperatureMilliC the same as {@code temperatureC}, as exact as it was said: 375 F is no
 *     whole degree C; null where whole degrees say it
 * @param servedAtMilliC likewise of {@code servedAtC}
 */
public record Preparation(
    String method,
    @Nullable Integer temperatureC,
    String cut,
    String doneWhen,
    @Nullable Integer servedAtC,
    String part,
    @Nullable Integer temperatureMilliC,
    @Nullable Integer servedAtMilliC) {
  /** Its fields. */
  static final Parts<Preparation> PARTS =
      Parts.of(
          Preparation.class,
          Field.text("method"),
          Field.whole("temperatureC").orNothing(),
          Field.text("cut"),
          Field.text("doneWhen"),
          Field.whole("servedAtC").orNothing(),
          Field.text("part"),
          Field.whole("temperatureMilliC").orNothing(),
          Field.whole("servedAtMilliC").orNothing());

  /** One of which the temperatures are whole degrees. */
  public Preparation(
      String method,
      @Nullable Integer temperatureC,
      String cut,
      String doneWhen,
      @Nullable Integer servedAtC,
      String part) {
    this(method, temperatureC, cut, doneWhen, servedAtC, part, null, null);
  }

  /** The same with temperatures as they were said, thousandths of a degree C. */
  public Preparation at(@Nullable Integer heatMilliC, @Nullable Integer servedMilliC) {
    return new Preparation(
        method,
        whole(heatMilliC),
        cut,
        doneWhen,
        whole(servedMilliC),
        part,
        fraction(heatMilliC),
        fraction(servedMilliC));
  }

  /** Returns the temperature of oven or pan, degrees C; null if nobody said. */
  public @Nullable Double heatC() {
    return exact(temperatureC, temperatureMilliC);
  }

  /** Returns the temperature at the table, degrees C; null if nobody said. */
  public @Nullable Double servedC() {
    return exact(servedAtC, servedAtMilliC);
  }

  private static @Nullable Double exact(@Nullable Integer wholeC, @Nullable Integer milliC) {
    if (milliC != null) {
      return milliC / 1000.0;
    }
    return wholeC == null ? null : Double.valueOf(wholeC);
  }

  private static @Nullable Integer whole(@Nullable Integer milliC) {
    return milliC == null ? null : Integer.valueOf(Math.floorDiv(milliC + 500, 1000));
  }

  private static @Nullable Integer fraction(@Nullable Integer milliC) {
    return milliC == null || milliC % 1000 == 0 ? null : milliC;
  }
}
