package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Harm;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Entry;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.lot.Cooking;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.tasting.design.Sheet;
import rindward.dashboard.tastings.CookedRequest;
import rindward.dashboard.tastings.KitchenView;
import rindward.dashboard.tastings.KitchenView.CookedView;
import rindward.dashboard.tastings.KitchenView.FilledView;
import rindward.dashboard.tastings.KitchenView.PotView;
import rindward.dashboard.tastings.KitchenView.TrayView;
import rindward.dashboard.tastings.TastingRefused;
import rindward.dashboard.tastings.TastingRefused.Why;

/** What the cook of a tasting goes by, and what the cook notes of each fruit. */
final class TastingKitchen {
  private final Lots lots;
  private final TastingResults names;
  private final Function<Session, Set<String>> stopped;

  /**
   * @param stopped the samples of a session that nobody tastes any more
   */
  TastingKitchen(Lots lots, TastingResults names, Function<Session, Set<String>> stopped) {
    this.lots = lots;
    this.stopped = stopped;
    this.names = names;
  }

  KitchenView view(Session session) {
    return new KitchenView(
        session.name(),
        session.planned().samples().stream().map(served -> pot(session, served)).toList(),
        session.plan().sheets().stream().map(sheet -> tray(session, sheet)).toList(),
        stopped.apply(session).stream().sorted().toList());
  }

  /**
   * Returns what is said by cooking a fruit: how it was, and that it has left its lot; nothing
   * where the very same is noted already.
   */
  List<Entry> entries(Session session, CookedRequest cooked, Instant at) throws TastingRefused {
    Served served =
        session
            .sample(cooked.sample())
            .orElseThrow(
                () ->
                    malformed(
                        "sample was '" + cooked.sample() + "' but the tasting has none such."));
    String given = cooked.fruit();
    if (given == null && served.fruits().size() > 1) {
      throw malformed("fruit was missing but it must be one of " + served.fruits() + ".");
    }
    String fruit = given == null ? served.fruits().get(0) : given;
    SampleCooked said =
        new SampleCooked(
            session.name(),
            served.name(),
            served.lot(),
            fruit,
            cooked.weightGrams(),
            new CutFruit(
                seeds(cooked.seeds()),
                cooked.fleshMm(),
                words(cooked.colour()),
                Boolean.TRUE.equals(cooked.freeLiquid()),
                Boolean.TRUE.equals(cooked.rotInside()),
                null,
                null,
                harms(cooked.found())),
            cooked.minutes(),
            words(cooked.doneness()),
            at);
    List<CookedView> before =
        session.cooked().stream()
            .filter(c -> c.sample().equals(served.name()) && c.fruit().equals(fruit))
            .map(TastingKitchen::cooked)
            .toList();
    if (before.contains(cooked(said))) {
      return List.of();
    }
    if (!before.isEmpty()) {
      throw new TastingRefused(
          Why.CONTRADICTED,
          "fruit was '" + fruit + "' but it is noted as cooked for " + served.name() + " already.");
    }
    return new Cooking(lots).of(said);
  }

  private PotView pot(Session session, Served served) {
    return new PotView(
        served.name(),
        served.lot(),
        names.cropName(served.lot()),
        names.variety(served.lot()),
        served.fruits(),
        session.cooked().stream()
            .filter(cooked -> cooked.sample().equals(served.name()))
            .map(TastingKitchen::cooked)
            .toList());
  }

  private static CookedView cooked(SampleCooked cooked) {
    CutFruit cut = cooked.cut();
    Seeds seeds = cut.seeds();
    return new CookedView(
        cooked.fruit(),
        cooked.weightGrams(),
        cooked.minutes(),
        cut.fleshMm(),
        seeds == null ? null : seeds.toString(),
        cut.colour(),
        cut.freeLiquid(),
        cut.rotInside(),
        cut.found() == null ? List.of() : cut.found().stream().map(Harm::toString).toList(),
        cooked.doneness());
  }

  private static TrayView tray(Session session, Sheet sheet) {
    return new TrayView(
        sheet.panelist(),
        "/taste/" + TasterLinks.secret(session, sheet.panelist()),
        sheet.cups().stream()
            .map(cup -> new FilledView(cup.code(), cup.flight() + 1, cup.sample()))
            .toList());
  }

  private static @Nullable Seeds seeds(@Nullable String word) throws TastingRefused {
    if (word == null || word.isBlank()) {
      return null;
    }
    return Arrays.stream(Seeds.values())
        .filter(seeds -> seeds.toString().equals(word.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> malformed("seeds was '" + word + "' but it must be full or flat."));
  }

  private static List<Harm> harms(@Nullable List<String> words) throws TastingRefused {
    List<Harm> harms = new ArrayList<>();
    for (String word : words == null ? List.<String>of() : words) {
      harms.add(
          Arrays.stream(Harm.values())
              .filter(harm -> harm.toString().equals(word.strip().toLowerCase(Locale.ROOT)))
              .findFirst()
              .orElseThrow(
                  () ->
                      malformed(
                          "found was '" + word + "' but it must be bitter, green, mould or rot.")));
    }
    return harms;
  }

  private static String words(@Nullable String text) {
    return text == null ? "" : text.strip();
  }

  private static TastingRefused malformed(String sentence) {
    return new TastingRefused(Why.MALFORMED, sentence);
  }
}
