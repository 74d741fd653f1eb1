package rindward.controller.ledger;

import java.util.Comparator;
import java.util.List;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.Chilling.Dose;
import rindward.controller.crop.Chilling.Harm;
import rindward.controller.crop.Cited;
import rindward.controller.crop.RateCurve;

/**
 * How fast cold injures, by fruit temperature: nothing from the threshold up, at the temperature of
 * each injuring dose what makes one whole injury in its days, straight lines between, and on beyond
 * the coldest. Injury grows with lower temperature and with longer exposure (Morris and Brady
 * 2005); the straight lines are common practice.
 */
final class InjuryRate {
  private static final long DAY_MILLIS = 86_400_000;

  private final int thresholdMilliC;
  private final List<Dose> doses;

  InjuryRate(Chilling chilling) {
    this.thresholdMilliC = chilling.threshold().value();
    this.doses =
        chilling.doses().stream()
            .map(Cited::value)
            .filter(dose -> dose.harm() == Harm.INJURES)
            .sorted(Comparator.comparingInt(Dose::temperatureMilliC).reversed())
            .toList();
  }

  /** Returns the injury earned per millisecond, in 1e-15 of a whole one. */
  long femtoPerMilli(int fruitMilliC) {
    if (fruitMilliC >= thresholdMilliC || doses.isEmpty()) {
      return 0;
    }
    int warmer = thresholdMilliC;
    long slower = 0;
    for (Dose dose : doses) {
      long rate = whole(dose);
      if (fruitMilliC >= dose.temperatureMilliC()) {
        long run = warmer - (long) dose.temperatureMilliC();
        return slower + (rate - slower) * (warmer - (long) fruitMilliC) / run;
      }
      warmer = dose.temperatureMilliC();
      slower = rate;
    }
    return slower * (thresholdMilliC - (long) fruitMilliC) / (thresholdMilliC - (long) warmer);
  }

  /**
   * Returns from where on it is an injury: the guide states whole days, so half a day short of the
   * longest dose is enough.
   */
  long enough() {
    int longest = doses.stream().mapToInt(Dose::days).max().orElse(1);
    return RateCurve.WHOLE - RateCurve.WHOLE / (2L * longest);
  }

  private static long whole(Dose dose) {
    return RateCurve.WHOLE / (dose.days() * DAY_MILLIS);
  }
}
