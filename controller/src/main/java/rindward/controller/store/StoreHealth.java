package rindward.controller.store;

import org.jspecify.annotations.Nullable;

/**
 * Whether what is measured reaches the disk.
 *
 * @param heldSamples samples in memory that the last flush could not write
 * @param lostSamples samples given up since the start, for memory is bounded
 * @param because why the last flush failed, in one sentence; null when it did not
 */
public record StoreHealth(int heldSamples, long lostSamples, @Nullable String because) {

  /** Tells whether the last flush succeeded. */
  public boolean isFine() {
    return because == null;
  }

  /** Returns the state in one sentence for the grower. */
  public String sentence() {
    String lost = lostSamples == 0 ? "" : ", " + lostSamples + " older ones were given up";
    return because == null
        ? "samples reach the disk" + lost
        : "holding samples in memory (" + heldSamples + " so far" + lost + "): " + because;
  }
}
