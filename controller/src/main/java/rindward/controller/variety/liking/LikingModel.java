package rindward.controller.variety.liking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import rindward.controller.mixed.Effect;
import rindward.controller.mixed.EffectSum;
import rindward.controller.mixed.MixedModel;
import rindward.controller.mixed.Mixture;
import rindward.controller.mixed.Rest;
import rindward.controller.mixed.Solved;
import rindward.controller.mixed.SolvedSum;
import rindward.controller.mixed.SpreadIntegral;
import rindward.controller.mixed.WeightedSpreads;

/**
 * A score is its type's level, and on top of it what variety, lot, fruit, taster, taster and
 * variety together, session and go add, unripeness takes off, and a rest. Every effect is drawn
 * towards zero as far as its spread says; the spreads are integrated over.
 */
final class LikingModel {
  private static final int VARIETY = 0;
  private static final int LOT = 1;

  /** How much an unripe fruit may lose or gain: known to be some points. Common practice. */
  private static final double UNRIPE_POINTS = 2;

  /**
   * How far a known name may move what is said of its variety, again and again. Common practice.
   */
  private static final double NAME_POINTS = 0.7;

  /** What counts for less than that changes no answer. */
  private static final double LEAST_WEIGHT = 1e-4;

  private record VarietyOf(String type, String variety) {}

  private record LotOf(VarietyOf variety, String lot, int season) {}

  private final Numbers<VarietyOf> varieties;
  private final Numbers<LotOf> lots;
  private final Numbers<String> types;
  private final int typeEffect;
  private final Map<String, String> checks;
  private final Map<EffectSum, List<SolvedSum>> parts = new HashMap<>();
  private final List<Double> weights = new ArrayList<>();
  private final double[] meanSpreads;
  private final Map<VarietyOf, Basis> basis = new HashMap<>();

  /**
   * Takes all scores that the grower's people ever gave to one question.
   *
   * @param unordered at least one
   * @param checks which variety of a type the others are compared with; none for a type without
   */
  LikingModel(List<TasteScore> unordered, Map<String, String> checks) {
    this.checks = checks;
    List<TasteScore> rows = unordered.stream().sorted(TasteScore.ORDER).toList();
    varieties = new Numbers<>(rows, LikingModel::variety);
    lots = new Numbers<>(rows, r -> new LotOf(variety(r), r.lot(), r.season()));
    types = new Numbers<>(rows, TasteScore::type);
    varieties
        .all()
        .keySet()
        .forEach(
            each ->
                basis.put(
                    each, Basis.of(rows.stream().filter(r -> variety(r).equals(each)).toList())));
    List<Effect> effects = new ArrayList<>();
    effects.add(varieties.drawn(Spread.VARIETY));
    effects.add(lots.drawn(Spread.LOT));
    effects.add(
        new Numbers<>(rows, r -> List.of(variety(r), r.lot(), r.fruit())).drawn(Spread.FRUIT));
    effects.add(
        new Numbers<>(rows, r -> List.of(variety(r), r.taster())).drawn(Spread.TASTER_BY_VARIETY));
    effects.add(new Numbers<>(rows, TasteScore::taster).drawn(Spread.TASTER));
    effects.add(
        new Numbers<>(rows, r -> r.session().isEmpty() ? null : r.session())
            .drawn(Spread.OCCASION));
    effects.add(
        new Numbers<>(rows, r -> r.session().isEmpty() ? null : List.of(r.session(), r.go()))
            .drawn(Spread.OCCASION));
    Numbers<VarietyOf> named =
        new Numbers<>(rows, r -> r.manner() == Manner.BLIND ? null : variety(r));
    effects.add(Effect.known(named.all().size(), named.ofRow(), NAME_POINTS));
    Numbers<Boolean> unripe = new Numbers<>(rows, r -> r.isUnripe() ? Boolean.TRUE : null);
    effects.add(Effect.known(unripe.all().size(), unripe.ofRow(), UNRIPE_POINTS));
    typeEffect = effects.size();
    effects.add(Effect.of(types.all().size(), types.ofRow(), Effect.FIXED));
    boolean[] isKitchen = new boolean[rows.size()];
    boolean hasKitchen = false;
    for (int row = 0; row < isKitchen.length; row++) {
      isKitchen[row] = rows.get(row).manner() == Manner.KITCHEN;
      hasKitchen |= isKitchen[row];
    }
    Rest rest = new Rest(Spread.REST.place(), hasKitchen ? Spread.KITCHEN.place() : -1, isKitchen);
    MixedModel model =
        new MixedModel(
            rows.stream().mapToDouble(TasteScore::value).toArray(),
            effects,
            varieties.ofRow(),
            rest);
    meanSpreads = new double[Spread.values().length];
    for (VarietyOf each : varieties.all().keySet()) {
      sums(each).forEach(sum -> parts.put(sum, new ArrayList<>()));
    }
    for (WeightedSpreads point : SpreadIntegral.of(model, Spread.prior(hasKitchen))) {
      if (point.weight() > LEAST_WEIGHT) {
        Solved solved = model.at(point.spreads());
        parts.forEach((sum, solutions) -> solutions.add(solved.sum(sum)));
        weights.add(point.weight());
        for (int i = 0; i < point.spreads().length; i++) {
          meanSpreads[i] += point.weight() * point.spreads()[i];
        }
      }
    }
  }

  /** Returns everything that is to be said of a variety. */
  private List<EffectSum> sums(VarietyOf variety) {
    List<EffectSum> sums = new ArrayList<>();
    sums.add(level(variety));
    seasonsOf(variety).forEach(season -> sums.add(inSeason(variety, season)));
    beside(variety).ifPresent(sums::add);
    return sums;
  }

  /** Returns the lots of a variety, in order. */
  private List<Integer> lotsOf(VarietyOf variety) {
    return lots.all().entrySet().stream()
        .filter(e -> e.getKey().variety().equals(variety))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Returns what a variety adds: with one lot, as it was grown here once; with more, by itself. */
  private EffectSum effect(VarietyOf variety) {
    EffectSum own = EffectSum.of(VARIETY, level(varieties, variety));
    List<Integer> its = lotsOf(variety);
    return its.size() == 1 ? own.plus(EffectSum.of(LOT, its.get(0)), 1) : own;
  }

  /** Returns what a variety added in one season: its lots of that year on average. */
  private EffectSum inSeason(VarietyOf variety, int season) {
    EffectSum sum =
        EffectSum.of(typeEffect, level(types, variety.type()))
            .plus(EffectSum.of(VARIETY, level(varieties, variety)), 1);
    List<Integer> its =
        lots.all().entrySet().stream()
            .filter(e -> e.getKey().variety().equals(variety) && e.getKey().season() == season)
            .map(Map.Entry::getValue)
            .toList();
    for (int lot : its) {
      sum = sum.plus(EffectSum.of(LOT, lot), 1.0 / its.size());
    }
    return sum;
  }

  /** Returns the standing of every variety, by type and name. */
  Map<String, Map<String, LikingStanding>> standings() {
    Map<String, Map<String, LikingStanding>> standings = new HashMap<>();
    for (VarietyOf each : varieties.all().keySet()) {
      TreeMap<Integer, Mixture> seasons = new TreeMap<>();
      seasonsOf(each).forEach(season -> seasons.put(season, of(inSeason(each, season))));
      standings
          .computeIfAbsent(each.type(), type -> new HashMap<>())
          .put(
              each.variety(),
              new LikingStanding(
                  lotsOf(each).size() == 1,
                  of(level(each)),
                  beside(each).map(sum -> sided(each, check(each).orElse(""), sum)),
                  seasons,
                  Objects.requireNonNull(basis.get(each))));
    }
    return standings;
  }

  private EffectSum level(VarietyOf variety) {
    return EffectSum.of(typeEffect, level(types, variety.type())).plus(effect(variety), 1);
  }

  /** Returns the check of its type, if that was scored and is not the variety itself. */
  private Optional<String> check(VarietyOf variety) {
    return Optional.ofNullable(checks.get(variety.type()))
        .filter(check -> !check.equals(variety.variety()))
        .filter(check -> varieties.all().containsKey(new VarietyOf(variety.type(), check)));
  }

  /** Returns the difference from the check, or from the average of all of the type. */
  private Optional<EffectSum> beside(VarietyOf variety) {
    Optional<String> check = check(variety);
    if (check.isPresent()) {
      VarietyOf other = new VarietyOf(variety.type(), check.get());
      return Optional.of(effect(variety).plus(effect(other), -1));
    }
    List<VarietyOf> ofType =
        varieties.all().keySet().stream().filter(v -> v.type().equals(variety.type())).toList();
    if (ofType.size() < 2) {
      return Optional.empty();
    }
    EffectSum difference = effect(variety);
    for (VarietyOf each : ofType) {
      difference = difference.plus(effect(each), -1.0 / ofType.size());
    }
    return Optional.of(difference);
  }

  /** A fruit is tasted beside one of the check; the average of a type is known as it is. */
  private Beside sided(VarietyOf variety, String check, EffectSum difference) {
    double tasters = Math.max(1, Objects.requireNonNull(basis.get(variety)).tasters());
    double pair = check.isEmpty() ? 1 : 2;
    double fruit = spread(Spread.FRUIT);
    double rest = spread(Spread.REST);
    double own = spread(Spread.TASTER_BY_VARIETY);
    return Beside.of(
        check,
        of(difference),
        pair * (fruit * fruit + rest * rest / tasters),
        pair * own * own / tasters);
  }

  /** Returns how far scores differ by each of the spreads, on average over what they may be. */
  double spread(Spread spread) {
    return meanSpreads[spread.place()];
  }

  double[] spreads() {
    return meanSpreads.clone();
  }

  private TreeSet<Integer> seasonsOf(VarietyOf variety) {
    TreeSet<Integer> seasons = new TreeSet<>();
    lots.all().keySet().stream()
        .filter(lot -> lot.variety().equals(variety))
        .forEach(lot -> seasons.add(lot.season()));
    return seasons;
  }

  private Mixture of(EffectSum sum) {
    return new Mixture(Objects.requireNonNull(parts.get(sum)), weights);
  }

  private static <K> int level(Numbers<K> numbers, K key) {
    return Objects.requireNonNull(numbers.all().get(key));
  }

  private static VarietyOf variety(TasteScore row) {
    return new VarietyOf(row.type(), row.variety());
  }
}
