package rindward.controller.crop;

/**
 * One stretch of a crop's time on the shelf in which it eats in one way.
 *
 * @param name short name, for example "dry and mealy"
 * @param since what the days are counted from
 * @param begins day on which it begins
 * @param ends day on which it ends; neither end lies before the same end of {@code begins}
 * @param sentence what a cook is told
 */
public record EatingPhase(String name, Since since, Days begins, Days ends, String sentence) {

  /** What days are counted from. */
  public enum Since {
    /** The day it was cut or dug. */
    HARVEST,
    /** The end of curing. */
    CURE
  }

  public EatingPhase {
    if (ends.low() < begins.low() || ends.high() < begins.high()) {
      throw new IllegalArgumentException(
          "phase '" + name + "' ended before it began but it must end later");
    }
  }
}
