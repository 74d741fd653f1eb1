package rindward.controller.mixed;

import java.util.List;

/**
 * A share of things (ripe, kept) that is met in groups (lots), of which each has its own share: how
 * much is known of the share that the groups have on average. Each group's share is beta
 * distributed around it (Skellam 1948, J. R. Stat. Soc. B 10: 257); the average is anything from 0
 * to 1 beforehand, and how alike groups are is averaged over {@link #ALIKE}. Few groups say little,
 * however many things they hold.
 */
public final class ShareAmongGroups {
  /** How alike two things of one group are: a little, as usual, much. Common practice. */
  private static final double[] ALIKE = {0.03, 0.1, 0.25};

  private static final int STEPS = 200;

  private final double[] weight = new double[STEPS];

  /** One group: so many of so many. */
  public record Seen(int with, int of) {}

  /** Learns from groups; those in which nothing was seen say nothing. */
  public ShareAmongGroups(List<Seen> groups) {
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      for (double alike : ALIKE) {
        double likelihood = 1;
        for (Seen seen : groups) {
          likelihood *= likelihood(middle(i), 1 / alike - 1, seen);
        }
        weight[i] += likelihood;
      }
      sum += weight[i];
    }
    for (int i = 0; i < STEPS; i++) {
      weight[i] /= sum;
    }
  }

  /** Returns the chance, 0 to 1, that the share is not below a limit. */
  public double chanceAtLeast(double share) {
    double chance = 0;
    for (int i = 0; i < STEPS; i++) {
      chance += middle(i) >= share ? weight[i] : 0;
    }
    return chance;
  }

  /** Returns the share below which the share lies with that chance, 0 to 1. */
  public double quantile(double chance) {
    double below = 0;
    for (int i = 0; i < STEPS; i++) {
      below += weight[i];
      if (below >= chance) {
        return middle(i);
      }
    }
    return 1;
  }

  private static double middle(int step) {
    return (step + 0.5) / STEPS;
  }

  private static double likelihood(double share, double strength, Seen seen) {
    double product = 1;
    for (int i = 0; i < seen.of(); i++) {
      double got =
          i < seen.with() ? share * strength + i : (1 - share) * strength + i - seen.with();
      product *= got / (strength + i);
    }
    return product;
  }
}
