package rindward.controller.keeping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Which share of a variety's fruits is still sound on some day: lots differ from each other by more
 * than chance, so few lots tell little however many fruits they held. The log-odds of a lot are
 * normal about the variety's; what is believed of level and spread is worked out on a grid from the
 * lots that were seen. Before any lot is seen every level is as likely, and the spread between lots
 * is that of a half-normal distribution of scale 1 (Gelman 2006, Bayesian Analysis 1: 515, advises
 * such a prior for few groups).
 *
 * @param day day of keeping that was asked for
 * @param lots how many lots tell of that day
 * @param share what is to be expected, 0..1
 * @param interval of 95 %, spread between lots included
 */
public record KeepingUntil(
    int day, int lots, double share, Interval interval, List<Believed> beliefs) {
  private static final double PRIOR_SCALE = 1;
  private static final double HIGHEST_LEVEL = 8;
  private static final double LEVEL_STEP = 0.2;
  private static final double HIGHEST_SPREAD = 2.8;
  private static final double SPREAD_STEP = 0.2;
  private static final int NODES = 25;
  private static final double TAIL = 0.025;

  /** From here a share is spoken of as likely, and below its counterpart as unlikely. */
  private static final double LIKELY = 0.9;

  private static final int MOST_MORE_LOTS = 12;

  /**
   * One share that the variety may have.
   *
   * @param share mean over lots, 0..1
   * @param weight how much it is believed; all add up to one
   */
  public record Believed(double share, double weight) {}

  public KeepingUntil {
    beliefs = List.copyOf(beliefs);
  }

  /** What one lot tells of a day: as many fruits as that knowledge is worth, sound and lost. */
  private record LotTells(double sound, double lost) {
    static Optional<LotTells> of(KeptLot lot, int day) {
      Survival survival = Survival.of(lot.fates());
      double share = survival.at(day);
      int watched = Survival.atRisk(lot.fates(), day);
      if (share <= 0) {
        return Optional.of(new LotTells(0, survival.count(Ending.LOST)));
      }
      if (watched == 0) {
        return Optional.empty();
      }
      Optional<SurvivalStep> last =
          survival.steps().stream().filter(s -> s.day() <= day).reduce((a, b) -> b);
      double worth =
          last.filter(s -> s.standardError() > 0)
              .map(s -> share * (1 - share) / (s.standardError() * s.standardError()))
              .orElse((double) watched);
      return Optional.of(new LotTells(share * worth, (1 - share) * worth));
    }
  }

  /** Returns what is known of a day; empty if no lot was watched until then. */
  public static Optional<KeepingUntil> of(List<KeptLot> lots, int day) {
    List<LotTells> told = lots.stream().flatMap(lot -> LotTells.of(lot, day).stream()).toList();
    return told.isEmpty() ? Optional.empty() : Optional.of(believed(told, day));
  }

  /** Returns the chance that the variety keeps at least such a share. */
  public double chanceOfAtLeast(double needed) {
    return beliefs.stream().filter(b -> b.share() >= needed).mapToDouble(Believed::weight).sum();
  }

  /**
   * Returns how many more lots like those that were seen would settle whether such a share is kept;
   * empty if it is settled, or if a dozen more would not do.
   */
  public static Optional<Integer> lotsToKnow(List<KeptLot> lots, int day, double needed) {
    List<LotTells> told = lots.stream().flatMap(lot -> LotTells.of(lot, day).stream()).toList();
    List<LotTells> more = new ArrayList<>(told);
    for (int added = 0; !told.isEmpty() && added <= MOST_MORE_LOTS; added++) {
      double chance = believed(more, day).chanceOfAtLeast(needed);
      if (chance >= LIKELY || chance <= 1 - LIKELY) {
        return added == 0 ? Optional.empty() : Optional.of(added);
      }
      more.add(told.get(added % told.size()));
    }
    return Optional.empty();
  }

  /** Returns what is known, as one sentence. */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "Until day %d %.0f %% keep (%.0f to %.0f, by %s%s).",
        day,
        100 * share,
        100 * interval.low(),
        100 * interval.high(),
        lots == 1 ? "one lot" : lots + " lots",
        lots == 1 ? ", so another lot may do otherwise" : "");
  }

  private static KeepingUntil believed(List<LotTells> told, int day) {
    List<Believed> raw = new ArrayList<>();
    for (double spread = 0; spread <= HIGHEST_SPREAD + SPREAD_STEP / 2; spread += SPREAD_STEP) {
      double prior = Math.exp(-spread * spread / (2 * PRIOR_SCALE * PRIOR_SCALE));
      for (double level = -HIGHEST_LEVEL; level <= HIGHEST_LEVEL; level += LEVEL_STEP) {
        double share = share(level, 0);
        double likelihood = prior * share * (1 - share);
        for (LotTells lot : told) {
          likelihood *= likelihood(lot, level, spread);
        }
        raw.add(new Believed(mean(level, spread), likelihood));
      }
    }
    double all = raw.stream().mapToDouble(Believed::weight).sum();
    List<Believed> beliefs =
        raw.stream().map(b -> new Believed(b.share(), b.weight() / all)).toList();
    double share = beliefs.stream().mapToDouble(b -> b.share() * b.weight()).sum();
    return new KeepingUntil(
        day,
        told.size(),
        share,
        new Interval(quantile(beliefs, TAIL), quantile(beliefs, 1 - TAIL)),
        beliefs);
  }

  private static double quantile(List<Believed> beliefs, double part) {
    List<Believed> sorted = new ArrayList<>(beliefs);
    Collections.sort(sorted, (a, b) -> Double.compare(a.share(), b.share()));
    double sum = 0;
    for (Believed each : sorted) {
      sum += each.weight();
      if (sum >= part) {
        return each.share();
      }
    }
    return sorted.get(sorted.size() - 1).share();
  }

  private static double mean(double level, double spread) {
    double sum = 0;
    for (double node : Nodes.OF) {
      sum += share(level, spread * node);
    }
    return sum / NODES;
  }

  private static double likelihood(LotTells lot, double level, double spread) {
    double sum = 0;
    for (double node : Nodes.OF) {
      double share = share(level, spread * node);
      sum += Math.exp(lot.sound() * Math.log(share) + lot.lost() * Math.log1p(-share));
    }
    return sum / NODES;
  }

  private static double share(double level, double more) {
    return 1 / (1 + Math.exp(-level - more));
  }

  /** The middles of so many equally likely parts of a standard normal distribution. */
  private static final class Nodes {
    static final double[] OF = new double[NODES];

    static {
      for (int i = 0; i < NODES; i++) {
        OF[i] = NormalDistribution.of(0, 1).inverseCumulativeProbability((i + 0.5) / NODES);
      }
    }
  }
}
