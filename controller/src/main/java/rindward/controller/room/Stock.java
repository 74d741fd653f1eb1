package rindward.controller.room;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Stay;
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

  /** Returns what lies in a room at a moment, by what was said of the lots. */
  public static Stock of(String room, Lots lots, CropGuide crops, Instant now) {
    int chilling = Thousandths.NONE;
    Instant newest = null;
    for (Lot lot : lots.all()) {
      for (Stay stay : lot.stays()) {
        if (isUnderWay(stay, room, now) && stay.to().isAfter(now)) {
          newest = newest == null || stay.from().isAfter(newest) ? stay.from() : newest;
          chilling = Math.max(chilling, chilling(lot, crops));
        }
      }
    }
    return new Stock(chilling, newest);
  }

  /** Tells whether a lot has come to a room by now, whether or not it lies there still. */
  static boolean hasComeTo(String room, Lots lots, Instant now) {
    return lots.all().stream()
        .flatMap(lot -> lot.stays().stream())
        .anyMatch(stay -> isUnderWay(stay, room, now));
  }

  private static boolean isUnderWay(Stay stay, String room, Instant now) {
    return stay.place().equals(room) && !stay.from().isAfter(now);
  }

  private static int chilling(Lot lot, CropGuide crops) {
    return crops
        .crop(lot.crop())
        .map(Crop::keeping)
        .flatMap(keeping -> keeping.chilling())
        .map(cold -> cold.threshold().value())
        .orElse(Thousandths.NONE);
  }

  /** Tells whether anything here is harmed by cold above freezing. */
  public boolean mindsCold() {
    return chillingMilliC != Thousandths.NONE;
  }
}
