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
  private final List<Solved> solved = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();
  private final double[] meanSpreads;
  private final Map<VarietyOf, Basis> basis = new HashMap<>();

  /**
   * Takes all scores that the grower's people ever gave to one question.
   *
   * @param unordered at least one
   */
  LikingModel(List<TasteScore> unordered) {
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
    for (WeightedSpreads point : SpreadIntegral.of(model, Spread.prior(hasKitchen))) {
      if (point.weight() > LEAST_WEIGHT) {
        solved.add(model.at(point.spreads()));
        weights.add(point.weight());
        for (int i = 0; i < point.spreads().length; i++) {
          meanSpreads[i] += point.weight() * point.spreads()[i];
        }
      }
    }
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
    EffectSum sum = EffectSum.of(VARIETY, level(varieties, variety));
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

  /** Returns a variety's own standing; empty if nobody scored it. */
  Optional<LikingStanding> standing(String type, String name, Optional<String> check) {
    VarietyOf variety = new VarietyOf(type, name);
    if (!varieties.all().containsKey(variety)) {
      return Optional.empty();
    }
    EffectSum level = EffectSum.of(typeEffect, level(types, type));
    TreeMap<Integer, Mixture> seasons = new TreeMap<>();
    for (int season : seasonsOf(variety)) {
      seasons.put(season, of(level.plus(inSeason(variety, season), 1)));
    }
    Optional<Beside> beside = beside(variety, check);
    return Optional.of(
        new LikingStanding(
            lotsOf(variety).size() == 1,
            of(level.plus(effect(variety), 1)),
            beside,
            seasons,
            Objects.requireNonNull(basis.get(variety))));
  }

  private Optional<Beside> beside(VarietyOf variety, Optional<String> check) {
    Optional<VarietyOf> other =
        check
            .map(each -> new VarietyOf(variety.type(), each))
            .filter(each -> !each.equals(variety) && varieties.all().containsKey(each));
    if (other.isPresent()) {
      EffectSum difference = effect(variety).plus(effect(other.get()), -1);
      return Optional.of(sided(variety, other.get().variety(), difference));
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
    return Optional.of(sided(variety, "", difference));
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

  private TreeSet<Integer> seasonsOf(VarietyOf variety) {
    TreeSet<Integer> seasons = new TreeSet<>();
    lots.all().keySet().stream()
        .filter(lot -> lot.variety().equals(variety))
        .forEach(lot -> seasons.add(lot.season()));
    return seasons;
  }

  private Mixture of(EffectSum sum) {
    List<SolvedSum> parts = new ArrayList<>();
    solved.forEach(each -> parts.add(each.sum(sum)));
    return new Mixture(parts, weights);
  }

  private static <K> int level(Numbers<K> numbers, K key) {
    return Objects.requireNonNull(numbers.all().get(key));
  }

  private static VarietyOf variety(TasteScore row) {
    return new VarietyOf(row.type(), row.variety());
  }
}
