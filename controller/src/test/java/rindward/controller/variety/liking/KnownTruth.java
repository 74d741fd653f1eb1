package rindward.controller.variety.liking;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Seasons of which the truth is known: how varieties, lots, fruits and tasters are drawn, and what
 * a panel then scores.
 *
 * @param variety standard deviation between varieties; and so on, in points
 * @param shift added to every score before it is rounded
 * @param unripeShare of the fruits, in half of the lots
 */
public record KnownTruth(
    int varieties,
    int seasons,
    int sessions,
    int tasters,
    double variety,
    double lot,
    double fruit,
    double taster,
    double tasterByVariety,
    double occasion,
    double rest,
    double shift,
    double unripeShare) {
  private static final int CUPS = 5;
  private static final double UNRIPE = 1.5;
  private static final double LEVEL = 6.2;

  /** Returns one of the four panels of which the aims speak. */
  public static KnownTruth panel(String name) {
    double shift = name.equals("harsh") ? -1.2 : name.equals("kind") ? 1 : 0;
    return new KnownTruth(
        10, 1, 3, 5, 0.8, 0, 0.8, 1, 0, 0, 1, shift, name.equals("unripe") ? 0.3 : 0);
  }

  /** What was drawn. */
  public record Drawn(List<TasteScore> scores, double[] truth, double[][] lots) {
    /** The truth of what an estimate speaks of: of the one lot, or of the variety. */
    double of(int variety) {
      return truth[variety] + (lots[variety].length == 1 ? lots[variety][0] : 0);
    }

    /** Returns how far the truth of a variety lies above that of all. */
    public double besideAverage(int variety) {
      double sum = 0;
      for (int v = 0; v < truth.length; v++) {
        sum += of(v);
      }
      return of(variety) - sum / truth.length;
    }
  }

  /** Returns the name of a variety. */
  public static String name(int variety) {
    return "V" + (char) ('A' + variety / 10) + variety % 10;
  }

  /** Draws a truth and its scores. */
  public Drawn draw(SplittableRandom random, boolean isRounded) {
    double[] truth = new double[varieties];
    double[][] lots = new double[varieties][seasons];
    double[][] own = new double[tasters][varieties];
    double[] level = new double[tasters];
    for (int v = 0; v < varieties; v++) {
      truth[v] = variety * random.nextGaussian();
      for (int s = 0; s < seasons; s++) {
        lots[v][s] = lot * random.nextGaussian();
      }
    }
    for (int t = 0; t < tasters; t++) {
      level[t] = taster * random.nextGaussian();
      for (int v = 0; v < varieties; v++) {
        own[t][v] = tasterByVariety * random.nextGaussian();
      }
    }
    boolean[] isDoubtful = new boolean[varieties];
    for (int v = 0; v < varieties; v++) {
      isDoubtful[v] = v < varieties / 2;
    }
    List<TasteScore> scores = new ArrayList<>();
    for (int s = 0; s < seasons; s++) {
      for (int n = 0; n < sessions; n++) {
        List<Integer> order = new ArrayList<>();
        for (int v = 0; v < varieties; v++) {
          order.add(random.nextInt(order.size() + 1), v);
        }
        double day = occasion * random.nextGaussian();
        double[] goes = new double[varieties / CUPS + 1];
        for (int g = 0; g < goes.length; g++) {
          goes[g] = occasion * random.nextGaussian();
        }
        for (int place = 0; place < varieties; place++) {
          int v = order.get(place);
          boolean isUnripe = isDoubtful[v] && random.nextDouble() < unripeShare;
          double of =
              LEVEL
                  + shift
                  + truth[v]
                  + lots[v][s]
                  + fruit * random.nextGaussian()
                  + day
                  + goes[place / CUPS]
                  - (isUnripe ? UNRIPE : 0);
          for (int t = 0; t < tasters; t++) {
            double value = of + level[t] + own[t][v] + rest * random.nextGaussian();
            scores.add(
                new TasteScore(
                    "kabocha",
                    name(v),
                    2020 + s,
                    name(v) + "-" + s,
                    "f" + n,
                    "T" + t,
                    s + "-" + n,
                    place / CUPS,
                    Manner.BLIND,
                    isUnripe,
                    isRounded ? Math.max(1, Math.min(9, Math.rint(value))) : value));
          }
        }
      }
    }
    return new Drawn(scores, truth, lots);
  }
}
