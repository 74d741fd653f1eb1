package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracies;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.History;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.LotExposure;
import rindward.controller.ledger.Run;
import rindward.controller.lot.EntryCheck;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Lots;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.variety.Grown;

/** An invented season: places with a climate, a journal, and the verdict on any day. */
final class Trial {
  static final CropGuide GUIDE = CropGuideReader.builtIn();
  static final Instant HARVEST = Instant.parse("2026-09-24T00:00:00Z");

  private static final int STEP_MILLIS = 300_000;
  private static final int DAYS = 400;
  private static final int A_DAY = 86_400_000 / STEP_MILLIS;

  private final Map<String, History> climates = new HashMap<>();
  private final List<Recorded> journal = new ArrayList<>();

  static Instant day(double day) {
    return HARVEST.plusSeconds(Math.round(day * 86_400));
  }

  /** A place measured every five minutes; both values by minutes since harvest. */
  Trial place(String name, IntUnaryOperator temperatureMilliC, IntUnaryOperator humidityMilliPct) {
    int samples = DAYS * A_DAY;
    int[] temperature = new int[samples];
    int[] humidity = new int[samples];
    for (int i = 0; i < samples; i++) {
      temperature[i] = temperatureMilliC.applyAsInt(i * 5);
      humidity[i] = humidityMilliPct.applyAsInt(i * 5);
    }
    Run run = new Run(HARVEST.toEpochMilli(), STEP_MILLIS, samples, temperature, humidity);
    climates.put(name, (from, to, visit) -> visit.accept(run));
    return this;
  }

  Trial place(String name, int temperatureMilliC, int humidityMilliPct) {
    return place(name, minute -> temperatureMilliC, minute -> humidityMilliPct);
  }

  Trial said(Entry entry) {
    assertThat(EntryCheck.refusal(entry, journal, GUIDE, day(DAYS))).isEmpty();
    journal.add(new Recorded(journal.size() + 1L, entry.at(), "Wren", entry));
    return this;
  }

  /** The lot as everything said up to a day tells it. */
  Lot lot(String code, double day) {
    return Lots.of(until(day)).find(code).orElseThrow();
  }

  LotExposure lived(String code, double day) {
    Lot lot = lot(code, day);
    Crop crop = GUIDE.crop(lot.crop()).orElseThrow();
    List<Exposure> life =
        Exposure.of(
            lot,
            Accuracies.of(until(day)),
            place -> climates.getOrDefault(place, (from, to, visit) -> {}),
            day(day));
    return LotExposure.of(
        lot,
        crop,
        life,
        LotAccount.of(life, crop, STEP_MILLIS),
        climates.getOrDefault(lot.place(), (from, to, visit) -> {}),
        STEP_MILLIS,
        day(day));
  }

  Verdict verdict(String code, double day) {
    Lot lot = lot(code, day);
    return Readiness.of(lot, GUIDE.crop(lot.crop()).orElseThrow(), lived(code, day), day(day));
  }

  Grown grown(String code, double day) {
    Lot lot = lot(code, day);
    return new Grown(lot, GUIDE.crop(lot.crop()).orElseThrow(), lived(code, day));
  }

  EatingOrder.Offer offer(String code, double day) {
    Lot lot = lot(code, day);
    return new EatingOrder.Offer(
        lot, GUIDE.crop(lot.crop()).orElseThrow(), lived(code, day), verdict(code, day));
  }

  private List<Recorded> until(double day) {
    return journal.stream().filter(r -> !r.entry().at().isAfter(day(day))).toList();
  }
}
