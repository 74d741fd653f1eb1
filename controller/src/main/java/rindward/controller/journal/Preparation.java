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
 */
public record Preparation(
    String method,
    @Nullable Integer temperatureC,
    String cut,
    String doneWhen,
    @Nullable Integer servedAtC,
    String part) {
  /** Its fields. */
  static final Parts<Preparation> PARTS =
      Parts.of(
          Preparation.class,
          Field.text("method"),
          Field.whole("temperatureC").orNothing(),
          Field.text("cut"),
          Field.text("doneWhen"),
          Field.whole("servedAtC").orNothing(),
          Field.text("part"));
}
