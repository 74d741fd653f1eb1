package rindward.controller.variety;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Planted;

/**
 * What a variety bore, season by season, ripe or not.
 *
 * @param seasons in order
 */
public record Yield(List<Season> seasons) {
  public Yield {
    seasons = List.copyOf(seasons);
  }

  /**
   * One season.
   *
   * @param fruits brought in
   * @param grams of all of them; null unless every lot was weighed as it came in
   * @param plants that were planned; 0 if nobody said
   */
  public record Season(int year, int fruits, @Nullable Integer grams, int plants) {
    /** Returns the season as one sentence. */
    public String sentence() {
      StringBuilder words = new StringBuilder();
      words.append(year).append(": ").append(fruits).append(fruits == 1 ? " fruit" : " fruits");
      Integer weight = grams;
      if (weight != null) {
        words.append(String.format(Locale.ROOT, ", %.1f kg", weight / 1000.0));
      }
      if (plants > 0) {
        words.append(
            String.format(
                Locale.ROOT,
                ", of %d %s: %.1f fruits%s a plant",
                plants,
                plants == 1 ? "plant" : "plants",
                (double) fruits / plants,
                weight == null
                    ? ""
                    : String.format(Locale.ROOT, " and %.1f kg", weight / 1000.0 / plants)));
      }
      return words.append('.').toString();
    }
  }

  static Yield of(VarietyName name, List<Grown> lots, Collection<Planted> plans) {
    List<Season> seasons = new ArrayList<>();
    for (int year : lots.stream().map(Grown::season).distinct().sorted().toList()) {
      List<Grown> own = lots.stream().filter(grown -> grown.season() == year).toList();
      List<Integer> weights =
          own.stream()
              .map(grown -> grown.lot().harvest().weightGrams())
              .filter(Objects::nonNull)
              .toList();
      seasons.add(
          new Season(
              year,
              own.stream().mapToInt(grown -> grown.lot().count()).sum(),
              weights.size() < own.size() ? null : Integer.valueOf(sum(weights)),
              plans.stream()
                  .filter(plan -> name.equals(new VarietyName(plan.crop(), plan.variety())))
                  .filter(plan -> year(plan) == year)
                  .mapToInt(Planted::plants)
                  .sum()));
    }
    return new Yield(seasons);
  }

  private static int sum(List<Integer> weights) {
    return weights.stream().mapToInt(Integer::intValue).sum();
  }

  private static int year(Planted plan) {
    LocalDate sown = plan.sown() == null ? plan.transplanted() : plan.sown();
    return sown == null ? plan.at().atZone(ZoneOffset.UTC).getYear() : sown.getYear();
  }
}
