package rindward.controller.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.RateCurve;
import rindward.controller.journal.Weighed;
import rindward.controller.ledger.BoundedTotal;
import rindward.controller.ledger.CureEnd;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.FruitBudget;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.readiness.Verdict;
import rindward.controller.variety.CupWorth;
import rindward.controller.variety.Grown;
import rindward.dashboard.lots.LotLine;
import rindward.dashboard.lots.LotLine.CupsView;
import rindward.dashboard.lots.LotLine.CureView;
import rindward.dashboard.lots.LotLine.ExpectedView;
import rindward.dashboard.lots.LotLine.FruitsView;
import rindward.dashboard.lots.LotLine.TagView;
import rindward.dashboard.lots.LotLine.VerdictView;

/** One lot as the list shows it. */
final class LotLines {
  private final CropGuide crops;

  LotLines(CropGuide crops) {
    this.crops = crops;
  }

  /**
   * Returns a lot in one line.
   *
   * @param offer its verdict; empty where none was asked for
   * @param asOf up to when it was followed
   * @param rank its place among those to eat, from 1; null if it is not one of them
   */
  LotLine line(Lot lot, Optional<Offer> offer, Instant asOf, @Nullable Integer rank, Instant now) {
    Optional<Crop> crop = crops.crop(lot.crop());
    return new LotLine(
        lot.code(),
        lot.version(),
        lot.crop(),
        crop.map(Crop::name).orElse(lot.crop()),
        lot.variety(),
        lot.grade() == null ? null : lot.grade().toString(),
        lot.harvest().plot(),
        lot.place(),
        lot.harvestedAt(),
        Math.toIntExact(Math.max(0, Duration.between(lot.harvestedAt(), now).toDays())),
        fruits(lot.fruits()),
        offer.filter(o -> o.crop().cure().isPresent()).map(o -> cure(o.lived())).orElse(null),
        offer.map(o -> verdict(o.verdict(), asOf)).orElse(null),
        offer.map(LotLines::cups).orElse(null),
        rank,
        tags(lot));
  }

  /** Returns a verdict's state as a word that stays the same. */
  static String word(Verdict verdict) {
    return verdict.state().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static CupsView cups(Offer offer) {
    CupWorth worth = CupWorth.of(new Grown(offer.lot(), offer.crop(), offer.lived()));
    return new CupsView(worth.says().name().toLowerCase(Locale.ROOT), worth.words());
  }

  private static FruitsView fruits(FruitBudget fruits) {
    Map<String, Integer> reserved = new TreeMap<>();
    fruits.reserved().forEach((purpose, count) -> reserved.put(purpose.toString(), count));
    return new FruitsView(
        fruits.harvested(),
        fruits.sound(),
        fruits.free(),
        fruits.used(),
        fruits.lost(),
        fruits.unaccounted(),
        reserved);
  }

  private static CureView cure(LotExposure lived) {
    BoundedTotal progress = lived.account().cureProgress();
    return new CureView(
        share(progress.certain()),
        share(progress.measured()),
        share(progress.possible()),
        lived.cureEnd().map(CureEnd::at).orElse(null));
  }

  /** Rounded down to thousandths: nothing is done before it is done. */
  private static double share(long progress) {
    return Math.min(1000, progress / (RateCurve.WHOLE / 1000)) / 1000.0;
  }

  private static VerdictView verdict(Verdict verdict, Instant asOf) {
    return new VerdictView(
        word(verdict),
        verdict.state().toString(),
        verdict.phase().orElse(null),
        verdict.expected().map(e -> new ExpectedView(e.what(), e.from(), e.to())).orElse(null),
        verdict.reasons(),
        verdict.wouldChange(),
        verdict.sureness().toString(),
        asOf);
  }

  /** The one that was weighed longest ago comes first: it is the next. */
  private static List<TagView> tags(Lot lot) {
    Map<String, TagView> last = new LinkedHashMap<>();
    for (Weighed weighed : lot.weighings()) {
      if (weighed.fruit() != null) {
        last.put(weighed.fruit(), new TagView(weighed.fruit(), weighed.netGrams(), weighed.at()));
      }
    }
    return last.values().stream()
        .sorted(Comparator.comparing(TagView::at).thenComparing(TagView::fruit))
        .toList();
  }
}
