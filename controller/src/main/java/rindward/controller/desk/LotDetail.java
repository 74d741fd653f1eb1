package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Weighed;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.JudgedLots;
import rindward.controller.judge.SecondFruit;
import rindward.controller.keeping.Interval;
import rindward.controller.keeping.Survival;
import rindward.controller.keeping.SurvivalStep;
import rindward.controller.keeping.Weighing;
import rindward.controller.keeping.WeightLoss;
import rindward.controller.keeping.WeightSeries;
import rindward.controller.ledger.Account;
import rindward.controller.ledger.BoundedTotal;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.variety.Grown;
import rindward.controller.variety.Liking;
import rindward.controller.variety.TasteApart;
import rindward.controller.variety.Tasted;
import rindward.controller.variety.VarietyKeeping;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotView;
import rindward.dashboard.lots.LotView.AccountView;
import rindward.dashboard.lots.LotView.EntryView;
import rindward.dashboard.lots.LotView.FruitView;
import rindward.dashboard.lots.LotView.HoursView;
import rindward.dashboard.lots.LotView.SecondFruitView;
import rindward.dashboard.lots.LotView.StayView;
import rindward.dashboard.lots.LotView.StepView;
import rindward.dashboard.lots.LotView.SurvivalView;
import rindward.dashboard.lots.LotView.TastingView;
import rindward.dashboard.lots.LotView.WeightView;
import rindward.dashboard.lots.LotView.WeightsView;

/** One lot with its whole story. */
final class LotDetail {
  private static final double HOUR_MILLIS = 3_600_000;
  private static final double DAY_MILLIS = 86_400_000;

  private final Set<String> rooms;
  private final String zone;

  /**
   * @param rooms places that have probes
   */
  LotDetail(Set<String> rooms, String zone) {
    this.rooms = Set.copyOf(rooms);
    this.zone = zone;
  }

  /** Returns it. */
  LotView view(Lot lot, LotLine line, JudgedLots judged, Instant now) {
    Optional<Grown> grown = judged.grown(lot);
    Optional<VarietyKeeping> keeping = grown.map(g -> VarietyKeeping.of(List.of(g), now));
    return new LotView(
        now,
        zone,
        line,
        stays(lot),
        grown.map(g -> accounts(g.lived())).orElse(List.of()),
        weights(lot),
        keeping.flatMap(VarietyKeeping::weightLoss).map(WeightLoss::sentence).orElse(null),
        keeping.map(LotDetail::survival).orElse(null),
        tastings(lot, grown, judged),
        SecondFruit.of(lot, judged).map(LotDetail::secondFruit).orElse(null),
        LotLiking.view(Liking.of(judged.ofVariety(lot), judged.tasted())),
        story(lot, judged.told()));
  }

  private List<StayView> stays(Lot lot) {
    return lot.stays().stream()
        .map(
            s ->
                new StayView(
                    s.place(),
                    s.from(),
                    s.to().equals(Instant.MAX) ? null : s.to(),
                    rooms.contains(s.place())))
        .toList();
  }

  private static List<AccountView> accounts(LotExposure lived) {
    List<AccountView> views = new ArrayList<>();
    if (!lived.isCureOnlyTold()) {
      add(views, "curing", lived.account().curing());
    }
    add(views, "keeping", lived.account().keeping());
    return views;
  }

  private static void add(List<AccountView> views, String stage, Account account) {
    if (account.elapsedMillis() > 0) {
      views.add(
          new AccountView(
              stage,
              hours(account.elapsedMillis()),
              hours(account.unknownMillis()),
              hours(account.outOfRangeMillis()),
              hours(account.inRange()),
              hours(account.tooCold()),
              hours(account.tooWarm()),
              hours(account.tooDry()),
              hours(account.tooDamp())));
    }
  }

  private static HoursView hours(BoundedTotal tally) {
    return new HoursView(hours(tally.certain()), hours(tally.measured()), hours(tally.possible()));
  }

  private static double hours(long millis) {
    return Math.round(millis / HOUR_MILLIS * 100) / 100.0;
  }

  private static List<WeightsView> weights(Lot lot) {
    record What(@Nullable String fruit, int count) {}
    Map<What, List<Weighed>> series = new LinkedHashMap<>();
    lot.weighings().stream()
        .sorted(Comparator.comparing(Weighed::at))
        .forEach(
            w ->
                series
                    .computeIfAbsent(new What(w.fruit(), w.count()), what -> new ArrayList<>())
                    .add(w));
    List<WeightsView> views = new ArrayList<>();
    series.forEach(
        (what, all) -> views.add(new WeightsView(what.fruit(), what.count(), points(lot, all))));
    return views;
  }

  private static List<WeightView> points(Lot lot, List<Weighed> all) {
    double[] loss =
        new WeightSeries(
                all.stream()
                    .map(
                        w ->
                            new Weighing(
                                Math.max(0, Duration.between(lot.harvestedAt(), w.at()).toMillis())
                                    / DAY_MILLIS,
                                w.netGrams()))
                    .toList())
            .lossPct();
    List<WeightView> points = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      double rounded = Math.round(loss[i] * 100) / 100.0;
      points.add(new WeightView(all.get(i).at(), all.get(i).netGrams(), rounded));
    }
    return points;
  }

  private static SurvivalView survival(VarietyKeeping keeping) {
    Survival survival = keeping.survival();
    if (!keeping.leftOut().isEmpty()) {
      return new SurvivalView(
          "It was picked unripe or hurt by cold: its fruits say nothing of how its variety keeps.",
          0,
          List.of());
    }
    return new SurvivalView(
        survival.sentence(),
        survival.lastDay(),
        survival.isEnoughForShare()
            ? survival.steps().stream().map(LotDetail::step).toList()
            : List.of());
  }

  private static StepView step(SurvivalStep step) {
    return new StepView(
        step.day(),
        step.survival(),
        step.interval().map(Interval::low).orElse(null),
        step.interval().map(Interval::high).orElse(null));
  }

  private static List<TastingView> tastings(Lot lot, Optional<Grown> grown, JudgedLots judged) {
    List<TastingView> views = new ArrayList<>();
    Optional<TasteApart> apart = grown.map(TasteApart::new);
    for (KitchenTasted taste : lot.tastes()) {
      Integer liking = taste.liking();
      views.add(
          new TastingView(
              taste.at(),
              null,
              liking == null ? null : liking.doubleValue(),
              taste.word(),
              apart.flatMap(a -> a.why(taste)).orElse(null)));
    }
    for (Tasted tasted : judged.tasted().getOrDefault(lot.code(), List.of())) {
      views.add(
          new TastingView(
              tasted.at(),
              tasted.session().name(),
              tasted.liking(),
              "",
              apart.flatMap(a -> a.why(tasted)).orElse(null)));
    }
    views.sort(Comparator.comparing(TastingView::at));
    return views;
  }

  private static SecondFruitView secondFruit(SecondFruit second) {
    Preparation kitchen = second.preparation().orElse(new Preparation("", null, "", "", null, ""));
    return new SecondFruitView(
        second.sentence(),
        second.ifRipe(),
        second.ifUnripe(),
        second.name(),
        second.samples().stream()
            .map(sample -> new FruitView(sample.lot(), sample.fruits()))
            .toList(),
        second.tasters(),
        kitchen.method(),
        kitchen.heatC(),
        kitchen.cut(),
        kitchen.doneWhen(),
        kitchen.servedC(),
        kitchen.part());
  }

  private static List<EntryView> story(Lot lot, JournalView told) {
    Set<Long> corrected =
        told.journal().stream()
            .map(Recorded::entry)
            .filter(Corrected.class::isInstance)
            .map(entry -> ((Corrected) entry).entry())
            .collect(Collectors.toSet());
    return Lots.standing(told.journal()).stream()
        .filter(r -> isOf(r.entry(), lot))
        .map(r -> entry(r, corrected.contains(r.id())))
        .sorted(Comparator.comparing(EntryView::at).thenComparingLong(EntryView::id).reversed())
        .toList();
  }

  private static boolean isOf(Entry entry, Lot lot) {
    return entry instanceof NewerEntry newer
        ? newer.lots().contains(lot.code())
        : entry instanceof OfLot ofLot && ofLot.lot().equals(lot.code());
  }

  private static EntryView entry(Recorded recorded, boolean isCorrected) {
    Entry entry = recorded.entry();
    Map<String, String> fields = new LinkedHashMap<>(EntryKinds.row(entry));
    String kind = fields.remove("kind");
    fields.remove("lot");
    fields.remove("at");
    return new EntryView(
        recorded.id(),
        entry.at(),
        recorded.recordedAt(),
        recorded.by(),
        kind == null ? "" : kind,
        fields,
        isCorrected);
  }
}
