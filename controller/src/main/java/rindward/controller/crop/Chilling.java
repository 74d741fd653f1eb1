package rindward.controller.crop;

import java.util.List;

/**
 * What cold above freezing does to a crop. Temperatures are those of the fruit, not of the air.
 *
 * @param threshold thousandths of a degree C below which cold begins to harm
 * @param doses how much cold has which consequence, in the order of the file
 */
public record Chilling(Cited<Integer> threshold, List<Cited<Dose>> doses) {
  public Chilling {
    doses = List.copyOf(doses);
  }

  /**
   * An amount of cold and its consequence.
   *
   * @param temperatureMilliC fruit at or below this counts, in thousandths of a degree C
   * @param days how many days of it in all
   * @param harm what follows
   * @param sentence what a grower is told
   */
  public record Dose(int temperatureMilliC, int days, Harm harm, String sentence) {}

  /** What a dose of cold does. */
  public enum Harm {
    /** It will keep less long: to be eaten within weeks. */
    SHORTENS,
    /** It is injured, though it may look sound. */
    INJURES
  }
}
