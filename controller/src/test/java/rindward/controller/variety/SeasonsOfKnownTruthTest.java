package rindward.controller.variety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Attested;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.lot.Lot;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.Sheet;

/**
 * Invented seasons of which the truth is known: ten varieties, three sessions of five tasters, one
 * fruit of each variety a session; in half of the lots three fruits of ten are unripe, 1.5 points
 * worse, with flat seeds. Does the plain mean of what counts still find the best one? At most 0.85
 * to 0.87 can be had that way; where one flat seed set a whole lot apart it was 0.69.
 */
class SeasonsOfKnownTruthTest {
  private static final CropGuide GUIDE = CropGuideReader.builtIn();
  private static final Instant HARVEST = Instant.parse("2026-09-20T00:00:00Z");
  private static final int SEASONS = Integer.getInteger("rindward.truth", 300);
  private static final long SEED = 20_261_201;
  private static final int VARIETIES = 10;
  private static final int SESSIONS = 3;
  private static final List<String> TASTERS = List.of("Ada", "Ben", "Cleo", "Dag", "Eva");

  /** Over 2,000 seasons it is at least 0.83; over 300 the share has a standard error of 0.02. */
  @Test
  void best_isAmongTheTopThree_thoughHalfOfTheLotsHaveUnripeFruits() {
    SplittableRandom random = new SplittableRandom(SEED);
    int found = 0;
    int apart = 0;
    int silent = 0;
    for (int i = 0; i < SEASONS; i++) {
      Season season = new Season(random.split());
      found += season.isBestAmongTopThree() ? 1 : 0;
      apart += season.setApart();
      silent += season.withoutAScore();
    }
    double share = (double) found / SEASONS;
    System.out.printf(
        Locale.ROOT,
        "seasons %d: best in the top three %.3f, lots set apart whole %.2f of 10,"
            + " varieties without a score %.2f of 10%n",
        SEASONS,
        share,
        (double) apart / SEASONS,
        (double) silent / SEASONS);
    assertThat(share).isGreaterThanOrEqualTo(SEASONS < 2_000 ? 0.80 : 0.83);
  }

  /** One year, told by its journal. */
  private static final class Season {
    private final List<Recorded> journal = new ArrayList<>();
    private final SplittableRandom random;
    private final double[] liking = new double[VARIETIES];
    private final boolean[] hasUnripe = new boolean[VARIETIES];
    private final JudgedLots judged;

    Season(SplittableRandom random) {
      this.random = random;
      double[] level = TASTERS.stream().mapToDouble(taster -> normal(1.0)).toArray();
      List<Integer> order =
          IntStream.range(0, VARIETIES)
              .boxed()
              .sorted(Comparator.comparingLong(each -> random.nextLong()))
              .toList();
      for (int v = 0; v < VARIETIES; v++) {
        liking[v] = 6.2 + normal(0.8);
        hasUnripe[v] = order.indexOf(v) < VARIETIES / 2;
        say(
            new Harvested(
                lot(v), "kabocha", "Variety " + v, 20, "porch", HARVEST, Grade.RIPE, null, null));
        say(new Attested(lot(v), "stem dry", HARVEST.plus(Duration.ofDays(10))));
      }
      for (int s = 0; s < SESSIONS; s++) {
        hold(s, level);
      }
      judged =
          JudgedLots.of(
              GUIDE,
              300_000,
              place -> (from, to, visit) -> {},
              JournalView.of(journal),
              HARVEST.plus(Duration.ofDays(60)));
    }

    private void hold(int number, double[] level) {
      Instant at = HARVEST.plus(Duration.ofDays(30 + 7L * number));
      String fruit = "f" + number;
      List<Served> samples =
          IntStream.range(0, VARIETIES)
              .mapToObj(v -> new Served("s" + v, lot(v), List.of(fruit)))
              .toList();
      SessionPlanned planned =
          new SessionPlanned(
              "session " + number,
              samples,
              TASTERS,
              "s0",
              null,
              null,
              6,
              Blinding.values()[0],
              new Preparation("steamed", null, "", "", null, ""),
              random.nextLong(),
              at);
      say(planned);
      double[] truth = new double[VARIETIES];
      for (int v = 0; v < VARIETIES; v++) {
        boolean isUnripe = hasUnripe[v] && random.nextDouble() < 0.3;
        truth[v] = liking[v] + normal(0.8) - (isUnripe ? 1.5 : 0);
        say(
            new SampleCooked(
                planned.session(),
                "s" + v,
                lot(v),
                fruit,
                null,
                CutFruit.of(isUnripe ? Seeds.FLAT : Seeds.FULL),
                null,
                "",
                at));
      }
      SessionPlan plan = SessionPlan.draw(planned.request(), planned.seed());
      for (Sheet sheet : plan.sheets()) {
        for (Cup cup : sheet.cups()) {
          int v = Integer.parseInt(cup.sample().substring(1));
          double felt = truth[v] + level[TASTERS.indexOf(sheet.panelist())] + normal(1.0);
          int score = (int) Math.max(1, Math.min(9, Math.round(felt)));
          say(
              new Scored(
                  planned.session(), sheet.panelist(), cup.code(), Attribute.LIKING, score, at));
        }
      }
      say(new SessionClosed(planned.session(), false, at.plusSeconds(3_600)));
    }

    boolean isBestAmongTopThree() {
      int best = IntStream.range(0, VARIETIES).boxed().max(byLiking()).orElseThrow();
      Map<String, Double> means = new HashMap<>();
      for (Lot lot : judged.told().lots().all()) {
        Liking.of(judged.ofVariety(lot), judged.tasted()).tastes().stream()
            .mapToDouble(each -> each.taste().liking())
            .average()
            .ifPresent(mean -> means.put(lot.code(), mean));
      }
      return means.entrySet().stream()
          .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
          .limit(3)
          .anyMatch(entry -> entry.getKey().equals(lot(best)));
    }

    int setApart() {
      return (int)
          judged.told().lots().all().stream()
              .filter(lot -> !SetApart.of(judged.grown(lot).orElseThrow()).isEmpty())
              .count();
    }

    int withoutAScore() {
      return (int)
          judged.told().lots().all().stream()
              .filter(lot -> Liking.of(judged.ofVariety(lot), judged.tasted()).tastes().isEmpty())
              .count();
    }

    private Comparator<Integer> byLiking() {
      return Comparator.comparingDouble(v -> liking[v]);
    }

    private static String lot(int variety) {
      return "V" + variety;
    }

    private double normal(double deviation) {
      double u = 1 - random.nextDouble();
      return deviation * Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    private void say(Entry entry) {
      journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
    }
  }
}
