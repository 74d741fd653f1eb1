package rindward.controller.crop;

/**
 * What follows when a harm is found in a fruit of a crop. One finding is enough; nothing of it is
 * statistics.
 *
 * @param harm what is found
 * @param reach how far the finding goes
 * @param say what is told, with where it comes from; one sentence or a few
 * @param sisters what is told of lots of the same seed or plot; empty where they are not touched
 * @param seed what is told of seed saved from it or beside it; empty where that is not touched
 */
public record HarmRule(Harm harm, Reach reach, Cited<String> say, String sisters, String seed) {

  /** How far a finding goes. */
  public enum Reach {
    /** Every fruit of its lot: nobody can tell from outside which others are like it. */
    LOT,
    /** The fruit alone; the others are looked at. */
    FRUIT
  }
}
