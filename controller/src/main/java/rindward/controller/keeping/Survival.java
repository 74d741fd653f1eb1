package rindward.controller.keeping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many fruits of a lot stay sound (Kaplan and Meier 1958). Fruits that were eaten sound, or are
 * sound still, count for as long as they were watched. Errors are Greenwood's (1926); the interval
 * is built on the scale of log(-log), where it cannot leave 0..1 (Kalbfleisch and Prentice 1980).
 */
public final class Survival {
  /** Below so many fruits there is no share, only the fruits themselves. Common practice. */
  public static final int FEWEST_FRUITS = 8;

  /** Below so many losses there is no half-life and no comparison. Common practice. */
  public static final int FEWEST_LOSSES = 5;

  private static final double TWO_SIDED_95 =
      NormalDistribution.of(0, 1).inverseSurvivalProbability(0.025);

  /** A product of fractions that is one half may miss it by the last bits of a double. */
  private static final double ROUNDING = 1e-12;

  private final List<Fate> fates;
  private final List<SurvivalStep> steps;

  private Survival(List<Fate> fates, List<SurvivalStep> steps) {
    this.fates = fates;
    this.steps = steps;
  }

  /** Follows the fruits of one lot or variety; every fruit must be in exactly one fate. */
  public static Survival of(List<Fate> fates) {
    List<Fate> all = List.copyOf(fates);
    NavigableMap<Integer, Ended> byDay = new TreeMap<>();
    int atRisk = 0;
    for (Fate fate : all) {
      byDay.merge(fate.day(), Ended.of(fate), Ended::and);
      atRisk += fate.fruits();
    }
    List<SurvivalStep> steps = new ArrayList<>();
    double survival = 1;
    double greenwood = 0;
    for (Map.Entry<Integer, Ended> day : byDay.entrySet()) {
      int lost = day.getValue().lost();
      if (lost > 0) {
        survival *= 1 - (double) lost / atRisk;
        greenwood += (double) lost / ((double) atRisk * (atRisk - lost));
        steps.add(step(day.getKey(), atRisk, lost, survival, greenwood));
      }
      atRisk -= day.getValue().fruits();
    }
    return new Survival(all, List.copyOf(steps));
  }

  /** What ended on one day: all of it, and what of it was lost. */
  private record Ended(int fruits, int lost) {
    static Ended of(Fate fate) {
      return new Ended(fate.fruits(), fate.ending().isLoss() ? fate.fruits() : 0);
    }

    Ended and(Ended more) {
      return new Ended(fruits + more.fruits, lost + more.lost);
    }
  }

  /** Returns the days on which fruits were lost, in order. */
  public List<SurvivalStep> steps() {
    return steps;
  }

  /** Returns the estimated share still sound after {@code day}, 0..1. */
  public double at(int day) {
    return steps.stream()
        .filter(s -> s.day() <= day)
        .reduce((first, second) -> second)
        .map(SurvivalStep::survival)
        .orElse(1.0);
  }

  /** Returns how many fruits were watched. */
  public int fruits() {
    return fates.stream().mapToInt(Fate::fruits).sum();
  }

  /** Returns how many fruits ended in that way. */
  public int count(Ending ending) {
    return fates.stream().filter(f -> f.ending() == ending).mapToInt(Fate::fruits).sum();
  }

  /** Returns the last day on which anything was seen; zero if nothing ever was. */
  public int lastDay() {
    return fates.stream().mapToInt(Fate::day).max().orElse(0);
  }

  /** Returns the last day on which at least so many fruits were still watched; 0 if never. */
  public int lastDayWith(int fruits) {
    int watched = 0;
    for (Fate fate : fates.stream().sorted(Comparator.comparing(Fate::day).reversed()).toList()) {
      watched += fate.fruits();
      if (watched >= fruits) {
        return fate.day();
      }
    }
    return 0;
  }

  /** Tells whether there are fruits enough for a share; otherwise they are named. */
  public boolean isEnoughForShare() {
    return fruits() >= FEWEST_FRUITS;
  }

  /** Tells whether there are fruits and losses enough for a half-life or a comparison. */
  public boolean isEnoughForRate() {
    return isEnoughForShare() && count(Ending.LOST) >= FEWEST_LOSSES;
  }

  /** Returns the day by which half were lost, as far as that can be told. */
  public HalfLife halfLife() {
    Optional<SurvivalStep> half =
        steps.stream().filter(s -> s.survival() <= 0.5 + ROUNDING).findFirst();
    if (half.isEmpty()) {
      return new HalfLife(HalfLife.State.NOT_REACHED, lastDay());
    }
    return new HalfLife(
        isEnoughForRate() ? HalfLife.State.REACHED : HalfLife.State.TOO_FEW_LOST, half.get().day());
  }

  /** Returns what became of the fruits, as one sentence. */
  public String sentence() {
    if (!isEnoughForShare()) {
      return named();
    }
    if (steps.isEmpty()) {
      return lastDay() == 0
          ? "None of " + fruits() + " fruits lost; not watched for a day yet."
          : "None of " + fruits() + " fruits lost by day " + lastDay() + ".";
    }
    SurvivalStep last = steps.get(steps.size() - 1);
    String share =
        String.format(
            Locale.ROOT,
            "%.0f %% keep past day %d%s",
            100 * last.survival(),
            last.day(),
            last.interval()
                .map(
                    i ->
                        String.format(
                            Locale.ROOT, " (%.0f to %.0f)", 100 * i.low(), 100 * i.high()))
                .orElse(""));
    return share
        + "; "
        + count(Ending.LOST)
        + " of "
        + fruits()
        + " lost; "
        + halfLife().words()
        + ".";
  }

  private String named() {
    int sound = count(Ending.STILL_SOUND);
    StringBuilder words = new StringBuilder();
    words.append(sound).append(" of ").append(fruits()).append(" sound on day ").append(lastDay());
    tell(words, Ending.USED_SOUND, "used while sound");
    tell(words, Ending.LOST, "lost");
    tell(words, Ending.ACCIDENT, "lost by accident");
    tell(words, Ending.UNACCOUNTED, "unaccounted for");
    return words.append('.').toString();
  }

  private void tell(StringBuilder words, Ending ending, String how) {
    if (count(ending) > 0) {
      words.append(", ").append(count(ending)).append(' ').append(how);
    }
  }

  /** Counts fruits watched up to a day; one used that very day was still watched. */
  static int atRisk(List<Fate> fates, int day) {
    return fates.stream().filter(f -> f.day() >= day).mapToInt(Fate::fruits).sum();
  }

  static int lostOn(List<Fate> fates, int day) {
    return fates.stream()
        .filter(f -> f.ending().isLoss() && f.day() == day)
        .mapToInt(Fate::fruits)
        .sum();
  }

  List<Fate> fates() {
    return fates;
  }

  private static SurvivalStep step(
      int day, int atRisk, int lost, double survival, double greenwood) {
    if (lost == atRisk) {
      return new SurvivalStep(day, atRisk, lost, 0, 0, Optional.empty());
    }
    double error = survival * Math.sqrt(greenwood);
    double reach = Math.exp(TWO_SIDED_95 * Math.sqrt(greenwood) / -Math.log(survival));
    Interval interval = new Interval(Math.pow(survival, reach), Math.pow(survival, 1 / reach));
    return new SurvivalStep(day, atRisk, lost, survival, error, Optional.of(interval));
  }
}
