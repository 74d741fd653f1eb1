package rindward.controller.desk;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Attested;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Lived;
import rindward.controller.ledger.LotAccount;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.store.StoreException;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.VarietyName;

/**
 * Verdicts on lots, from everything measured and said. What the air has done to a lot is added up
 * at each full hour and remembered; a page that comes first in a new hour gets what was true in the
 * one before, and the new sum is made {@code later}. What people say counts at once. All that is
 * remembered may be forgotten at any moment. For any thread.
 */
public final class LotVerdicts {
  private static final Logger LOG = LoggerFactory.getLogger(LotVerdicts.class);

  private final CropGuide crops;
  private final long holdMillis;
  private final Function<String, History> historyOf;
  private final Executor later;
  private final Map<String, Remembered> byCode = new ConcurrentHashMap<>();
  private final Map<VarietyName, Learned> learned = new ConcurrentHashMap<>();
  private final Map<String, Instant> awaited = new ConcurrentHashMap<>();

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param later adds up what nobody waits for
   */
  public LotVerdicts(
      CropGuide crops, long holdMillis, Function<String, History> historyOf, Executor later) {
    this.crops = crops;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
    this.later = later;
  }

  /**
   * A lot with its verdict.
   *
   * @param asOf the moment up to which the air was added up
   */
  record Judged(Offer offer, Instant asOf) {}

  private record Learned(long last, Instant asOf, Experience experience) {}

  private record Remembered(Key key, Instant asOf, Lived lived) {}

  /** What the air can have done to a lot depends on nothing else that people say. */
  private record Key(
      List<Stay> stays,
      Optional<Attested> attested,
      Optional<Integer> fruitGrams,
      long lastAccuracy) {}

  /** Returns a lot with its verdict as of this full hour or, at its beginning, the one before. */
  Optional<Judged> lately(Lot lot, Told told, Instant now) {
    return crops
        .crop(lot.crop())
        .map(
            crop -> {
              Remembered known = remembered(lot, crop, told, asOf(lot, now));
              Grown grown = new Grown(lot, crop, known.lived());
              Offer offer = experience(grown.name(), told, now).judge(grown, known.asOf());
              return new Judged(offer, known.asOf());
            });
  }

  /** Returns a lot of a known type with what the air has done to it, by the same hour. */
  Optional<Grown> grown(Lot lot, Told told, Instant now) {
    return crops
        .crop(lot.crop())
        .map(crop -> new Grown(lot, crop, remembered(lot, crop, told, asOf(lot, now)).lived()));
  }

  /** What the lots of its variety teach about a lot, learned anew when something was said. */
  private Experience experience(VarietyName name, Told told, Instant now) {
    Instant hour = now.truncatedTo(ChronoUnit.HOURS);
    Learned known = learned.get(name);
    if (known == null || known.last() != told.last() || !known.asOf().equals(hour)) {
      known =
          new Learned(
              told.last(), hour, Experience.of(ofVariety(name, told, now), told.sessions()));
      learned.put(name, known);
    }
    return known.experience();
  }

  /** Returns the lots of the same variety; of one without a name, that one alone. */
  List<Grown> ofVariety(Lot lot, Told told, Instant now) {
    return ofVariety(new VarietyName(lot.crop(), lot.variety()), told, now).stream()
        .filter(grown -> !lot.variety().isEmpty() || grown.lot().code().equals(lot.code()))
        .toList();
  }

  private List<Grown> ofVariety(VarietyName name, Told told, Instant now) {
    return told.lots().all().stream()
        .filter(lot -> new VarietyName(lot.crop(), lot.variety()).equals(name))
        .flatMap(lot -> grown(lot, told, now).stream())
        .toList();
  }

  /** Forgets everything remembered; the next answers are the same, and slower. */
  public void forget() {
    byCode.clear();
    learned.clear();
  }

  private Remembered remembered(Lot lot, Crop crop, Told told, Instant asOf) {
    Key key = new Key(lot.stays(), lot.attested(), lot.fruitGrams(), told.lastAccuracy());
    Remembered known = byCode.get(lot.code());
    if (known == null || !known.key().equals(key)) {
      return remember(lot, crop, told, key, asOf);
    }
    if (!known.asOf().equals(asOf)) {
      refresh(lot, crop, told, key, asOf);
    }
    return byCode.getOrDefault(lot.code(), known);
  }

  private void refresh(Lot lot, Crop crop, Told told, Key key, Instant asOf) {
    if (awaited.putIfAbsent(lot.code(), asOf) == null) {
      later.execute(
          () -> {
            try {
              var unused = remember(lot, crop, told, key, asOf);
            } catch (StoreException e) {
              LOG.debug("lot {} is added up at the next look", lot.code(), e);
            } finally {
              awaited.remove(lot.code());
            }
          });
    }
  }

  /** Whoever asks for the same lot meanwhile waits for this sum instead of making another. */
  private Remembered remember(Lot lot, Crop crop, Told told, Key key, Instant asOf) {
    return byCode.compute(
        lot.code(),
        (code, known) ->
            known != null && known.key().equals(key) && !known.asOf().isBefore(asOf)
                ? known
                : new Remembered(key, asOf, lived(lot, crop, told, asOf)));
  }

  private Lived lived(Lot lot, Crop crop, Told told, Instant now) {
    List<Exposure> life = Exposure.of(lot, told.accuracies(), historyOf, now);
    LotAccount account = LotAccount.of(life, crop, holdMillis);
    return Lived.of(lot, crop, life, account, holdMillis, now);
  }

  private static Instant asOf(Lot lot, Instant now) {
    Instant hour = now.truncatedTo(ChronoUnit.HOURS);
    return hour.isBefore(lot.harvestedAt()) ? lot.harvestedAt() : hour;
  }
}
