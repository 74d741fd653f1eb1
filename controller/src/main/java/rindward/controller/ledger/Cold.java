package rindward.controller.ledger;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Chilling.Dose;

/**
 * The cold a lot has lived through. The air's cold is only told; what harms is the fruit's.
 *
 * @param airBelowMillis time in which the air was below the chilling threshold
 * @param fruitBelowMillis time in which the fruit was
 * @param coldestFruitMilliC thousandths of a degree C; {@code Thousandths.NONE} if never known
 * @param frozenMillis time in which the fruit was at or below its freezing point
 * @param injury in 1e-15 of the cold that injures; {@link #isInjured} tells when it is enough
 * @param isInjured whether the cold adds up to a dose that injures
 * @param shortening the doses reached that shorten its life
 * @param lastBelow when the fruit was below the threshold last; null if it never was
 */
public record Cold(
    long airBelowMillis,
    long fruitBelowMillis,
    int coldestFruitMilliC,
    long frozenMillis,
    long injury,
    boolean isInjured,
    List<Dose> shortening,
    @Nullable Instant lastBelow) {
  public Cold {
    shortening = List.copyOf(shortening);
  }
}
