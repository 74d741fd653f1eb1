package rindward.controller.room;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Thousandths;

/**
 * What lies in a room, as far as its control must know.
 *
 * @param chillingMilliC highest temperature below which cold begins to harm any of it, thousandths
 *     of a degree C; {@link Thousandths#NONE} when nothing here minds
 * @param newest when the newest of it was carried in; null when nobody knows
 */
public record Stock(int chillingMilliC, @Nullable Instant newest) {
  /** A room of which nobody has said what lies in it. */
  public static final Stock UNTOLD = new Stock(Thousandths.NONE, null);

  /** Tells whether anything here is harmed by cold above freezing. */
  public boolean mindsCold() {
    return chillingMilliC != Thousandths.NONE;
  }
}
