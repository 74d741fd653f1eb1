package rindward.controller.variety;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rindward.controller.journal.Decision;
import rindward.controller.mixed.ShareAmongGroups;
import rindward.controller.mixed.ShareAmongGroups.Seen;
import rindward.controller.variety.liking.KnownTruth;
import rindward.controller.variety.liking.LikingEstimate;
import rindward.controller.variety.liking.LikingStanding;
import rindward.controller.variety.liking.TasteScore;

/**
 * How often what is said of varieties is right, over invented seasons of which the truth is known:
 * {@code mvn -Pquick,verdicts verify}. The tables stand in MEASURED.md.
 */
final class VerdictTables {
  private static final double YES = 0.9;
  private static final double CLAIM = 0.98;
  private static final int LOT = 12;
  private static final int CUT = 4;

  /** Counts of one season: what was told of whom. */
  private record Told(double[] counts) {
    Told plus(Told other) {
      double[] sum = counts.clone();
      Arrays.setAll(sum, i -> sum[i] + other.counts[i]);
      return new Told(sum);
    }
  }

  private VerdictTables() {}

  public static void main(String[] arguments) {
    int seasons = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2_000;
    suggestions(Math.max(1, seasons / 20));
    likings(seasons);
    identical(seasons);
  }

  private static void likings(int seasons) {
    print(
        "Liking alone, %d seasons a panel; each: estimate / fixed limits / plain mean%n", seasons);
    print("panel    best told grow  best told drop  grow, below avg  drop, above avg  best in 3%n");
    for (String panel : List.of("normal", "harsh", "kind", "unripe")) {
      double[] n =
          IntStream.range(0, seasons)
              .parallel()
              .mapToObj(i -> liking(panel, i))
              .reduce(Told::plus)
              .orElseThrow()
              .counts();
      print(
          "%-8s %.3f / %.3f   %.3f / %.3f   %.3f / %.3f    %.3f / %.3f    %.3f / %.3f%n",
          panel,
          n[0] / seasons,
          n[5] / seasons,
          n[1] / seasons,
          n[6] / seasons,
          n[2] / seasons,
          n[7] / seasons,
          n[3] / seasons,
          n[8] / seasons,
          n[4] / seasons,
          n[9] / seasons);
    }
  }

  private static Told liking(String panel, long seed) {
    KnownTruth.Drawn drawn = KnownTruth.panel(panel).draw(new SplittableRandom(seed), true);
    LikingEstimate estimate = LikingEstimate.of(drawn.scores(), Map.of());
    int size = drawn.truth().length;
    int best = best(drawn.truth());
    double[] counts = new double[10];
    double[] estimated = new double[size];
    double[] means = new double[size];
    for (int v = 0; v < size; v++) {
      String name = KnownTruth.name(v);
      LikingStanding standing = estimate.of("kabocha", name).orElseThrow();
      double chance = standing.beside().orElseThrow().chanceBetter();
      estimated[v] = standing.level().mean();
      means[v] =
          drawn.scores().stream()
              .filter(s -> s.variety().equals(name) && !s.isUnripe())
              .mapToDouble(TasteScore::value)
              .average()
              .orElse(0);
      boolean isAbove = drawn.besideAverage(v) > 0;
      add(counts, 0, chance >= YES, chance <= 1 - YES, v == best, isAbove);
      add(counts, 5, means[v] >= 7, means[v] < 5, v == best, isAbove);
    }
    counts[4] = isInTopThree(estimated, best) ? 1 : 0;
    counts[9] = isInTopThree(means, best) ? 1 : 0;
    return new Told(counts);
  }

  private static void add(
      double[] counts, int at, boolean grow, boolean drop, boolean isBest, boolean isAbove) {
    counts[at] += grow && isBest ? 1 : 0;
    counts[at + 1] += drop && isBest ? 1 : 0;
    counts[at + 2] += grow && !isAbove ? 1 : 0;
    counts[at + 3] += drop && isAbove ? 1 : 0;
  }

  private static void identical(int seasons) {
    KnownTruth same = new KnownTruth(10, 1, 3, 5, 0, 0, 0.8, 1, 0, 0, 1, 0, 0);
    long claimed =
        IntStream.range(0, seasons)
            .parallel()
            .filter(
                i -> {
                  LikingEstimate estimate =
                      LikingEstimate.of(
                          same.draw(new SplittableRandom(i), true).scores(),
                          Map.of("kabocha", KnownTruth.name(0)));
                  return IntStream.range(1, 10)
                      .mapToDouble(
                          v ->
                              estimate
                                  .of("kabocha", KnownTruth.name(v))
                                  .flatMap(LikingStanding::beside)
                                  .orElseThrow()
                                  .chanceBetter())
                      .anyMatch(chance -> chance >= CLAIM || chance <= 1 - CLAIM);
                })
            .count();
    print(
        "Ten that are the same: a season with a claim beside the check %.3f%n",
        (double) claimed / seasons);
  }

  /**
   * Ten varieties over two seasons, a lot of twelve each year of which four are cut: two that eat
   * well and do all three, two that eat well and rot, two that eat well and hardly ripen, four that
   * eat less well. Lots differ: two fruits of one lot are alike by 0.1.
   */
  private static void suggestions(int farms) {
    String[] kinds = {"does all three", "eats well, rots", "eats well, hardly ripens", "eats less"};
    print("The suggestion after two seasons, %d farms%n", farms);
    print("%-26s grow   try    drop   open%n", "");
    double[][] counts = new double[kinds.length][4];
    for (int farm = 0; farm < farms; farm++) {
      SplittableRandom random = new SplittableRandom(77_000L + farm);
      KnownTruth truth = new KnownTruth(10, 2, 3, 5, 0.3, 0.2, 0.8, 1, 0.3, 0.2, 1, 0, 0);
      List<TasteScore> scores = new ArrayList<>();
      for (TasteScore s : truth.draw(random, false).scores()) {
        int v = Integer.parseInt(s.variety().substring(2));
        scores.add(moved(s, v < 6 ? 1.2 : -1.2));
      }
      LikingEstimate estimate = LikingEstimate.of(scores, Map.of());
      for (int v = 0; v < 10; v++) {
        int kind = Math.min(3, v / 2);
        double chance =
            estimate
                .of("kabocha", KnownTruth.name(v))
                .flatMap(LikingStanding::beside)
                .orElseThrow()
                .chanceBetter();
        Prospect ripens = share(random, kind == 2 ? 0.15 : 0.95, CUT);
        Prospect keeps = share(random, kind == 1 ? 0.15 : 0.95, LOT);
        Optional<Decision> told =
            Suggestion.of(
                    new Chances(ripens, Prospect.of(chance, "Liked."), keeps),
                    false,
                    2,
                    Optional.empty())
                .decision();
        counts[kind][told.map(List.of(Decision.values())::indexOf).orElse(3)]++;
      }
    }
    for (int kind = 0; kind < kinds.length; kind++) {
      double all = Arrays.stream(counts[kind]).sum();
      print(
          "%-26s %.3f  %.3f  %.3f  %.3f%n",
          kinds[kind],
          counts[kind][0] / all,
          counts[kind][1] / all,
          counts[kind][2] / all,
          counts[kind][3] / all);
    }
  }

  private static Prospect share(SplittableRandom random, double share, int fruits) {
    List<Seen> lots = new ArrayList<>();
    for (int lot = 0; lot < 2; lot++) {
      // Drawn as from an urn: what was drawn makes its like likelier.
      int with = 0;
      for (int i = 0; i < fruits; i++) {
        with += random.nextDouble() < (share * 9 + with) / (9 + i) ? 1 : 0;
      }
      lots.add(new Seen(with, fruits));
    }
    return Prospect.of(new ShareAmongGroups(lots).chanceAtLeast(0.75), "Seen.");
  }

  private static TasteScore moved(TasteScore s, double by) {
    double value = Math.max(1, Math.min(9, Math.rint(s.value() + by)));
    return new TasteScore(
        s.type(),
        s.variety(),
        s.season(),
        s.lot(),
        s.fruit(),
        s.taster(),
        s.session(),
        s.go(),
        s.manner(),
        s.isUnripe(),
        value);
  }

  private static boolean isInTopThree(double[] values, int best) {
    return Arrays.stream(values).filter(value -> value > values[best]).count() < 3;
  }

  private static int best(double[] truth) {
    return IntStream.range(0, truth.length)
        .reduce((one, other) -> truth[other] > truth[one] ? other : one)
        .orElseThrow();
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
