package rindward.controller.store.samples;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether what is measured reaches the disk, and whether it would outlive the disk.
 *
 * @param heldSamples samples in memory that the last flush could not write
 * @param lostSamples samples given up since the start, for memory is bounded
 * @param because why the last flush failed, in one sentence; null when it did not
 * @param anew why the database was begun anew at the start; null when it was not
 * @param damage what reading all of the database has found to be damaged; null when nothing was
 * @param copyTrouble why the last copy could not be made, in one sentence; null when it was
 * @param elsewhereTrouble since when no copy has come to the second place, in one sentence; null
 *     while that is not too long, or there is no such place
 */
public record StoreHealth(
    int heldSamples,
    long lostSamples,
    @Nullable String because,
    @Nullable String anew,
    @Nullable String damage,
    @Nullable String copyTrouble,
    @Nullable String elsewhereTrouble) {

  StoreHealth with(
      @Nullable String nextAnew,
      @Nullable String nextDamage,
      @Nullable String nextCopyTrouble,
      @Nullable String nextElsewhereTrouble) {
    return new StoreHealth(
        heldSamples,
        lostSamples,
        because,
        nextAnew,
        nextDamage,
        nextCopyTrouble,
        nextElsewhereTrouble);
  }

  /** Tells whether the last flush succeeded, into a whole database that was there before. */
  public boolean isKeeping() {
    return because == null && anew == null && damage == null;
  }

  /** Tells whether there is nothing to be said of it. */
  public boolean isFine() {
    return isKeeping() && copyTrouble == null && elsewhereTrouble == null;
  }

  /** Returns the state for the grower, as the rest of a sentence that begins "The store is". */
  public String sentence() {
    String lost = lostSamples == 0 ? "" : ", " + lostSamples + " older ones were given up";
    List<String> said = new ArrayList<>();
    if (because != null) {
      said.add("holding samples in memory (" + heldSamples + " so far" + lost + "): " + because);
    }
    if (anew != null) {
      said.add(anew);
    }
    if (damage != null) {
      said.add(damage);
    }
    if (copyTrouble != null) {
      said.add("without a new copy: " + copyTrouble);
    }
    if (elsewhereTrouble != null) {
      said.add("without a copy elsewhere: " + elsewhereTrouble);
    }
    return said.isEmpty() ? "samples reach the disk" + lost : String.join("; it is ", said);
  }
}
