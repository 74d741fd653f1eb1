package rindward.controller.judge;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.ledger.Exposure;
import rindward.controller.ledger.History;
import rindward.controller.ledger.LotAccount;
import rindward.controller.ledger.LotExposure;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Session;
import rindward.controller.readiness.EatingOrder;
import rindward.controller.readiness.EatingOrder.Offer;
import rindward.controller.variety.Experience;
import rindward.controller.variety.Grown;
import rindward.controller.variety.LotLesson;
import rindward.controller.variety.Tasted;
import rindward.controller.variety.TrialRecord;
import rindward.controller.variety.VarietyName;
import rindward.controller.variety.VarietyVerdict;

/**
 * Every lot and every variety as they stand: a function of what was told, of the air up to one full
 * hour, and of the guide. Each answer is worked out when it is first asked. A lot whose type has
 * left the guide has none. For any thread.
 */
public final class JudgedLots {
  private final CropGuide crops;
  private final long holdMillis;
  private final Function<String, History> historyOf;
  private final Function<VarietyName, Map<String, LotLesson>> taught;
  private final JournalView told;
  private final Instant hour;
  private final Map<VarietyName, List<Lot>> byVariety = new LinkedHashMap<>();
  private final Map<String, List<Tasted>> tasted;
  private final Map<String, Grown> lives = new ConcurrentHashMap<>();
  private final Map<VarietyName, Learned> learned = new ConcurrentHashMap<>();
  private final Map<String, Offer> offers = new ConcurrentHashMap<>();
  private final Map<VarietyName, Dated> verdicts = new ConcurrentHashMap<>();
  private volatile @Nullable List<Offer> toEat;
  private volatile @Nullable TrialRecord trials;
  private final LikingOfAll liking;

  /** A verdict that stays the same until a lot is a day older. */
  private record Dated(Instant from, Instant until, VarietyVerdict verdict) {
    boolean isSoAt(Instant now) {
      return !now.isBefore(from) && now.isBefore(until);
    }
  }

  /** What the lots of a variety teach. */
  private record Learned(List<Grown> lots, Experience experience) {}

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param taught by the lots of a variety that are over, by their codes
   * @param hour up to which the air counts
   * @param before of which is taken what has not changed since
   */
  JudgedLots(
      CropGuide crops,
      long holdMillis,
      Function<String, History> historyOf,
      Function<VarietyName, Map<String, LotLesson>> taught,
      JournalView told,
      Instant hour,
      @Nullable JudgedLots before) {
    this.crops = crops;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
    this.taught = taught;
    this.told = told;
    this.hour = hour;
    for (Lot lot : told.lots().all()) {
      if (crops.crop(lot.crop()).isPresent()) {
        byVariety.computeIfAbsent(name(lot), name -> new ArrayList<>()).add(lot);
      }
    }
    this.liking = before == null ? new LikingOfAll() : before.liking;
    boolean isSameTaste = before != null && areSame(before.told.sessions(), told.sessions());
    this.tasted = before != null && isSameTaste ? before.tasted : Tasted.byLot(closed(told));
    if (before != null) {
      takeOver(before, isSameTaste);
    }
  }

  /** Judges everything told, once; see {@link LotJudge} for somebody who will ask again. */
  public static JudgedLots of(
      CropGuide crops,
      long holdMillis,
      Function<String, History> historyOf,
      JournalView told,
      Instant now) {
    return new JudgedLots(
        crops,
        holdMillis,
        historyOf,
        name -> Map.of(),
        told,
        now.truncatedTo(ChronoUnit.HOURS),
        null);
  }

  /** Returns what this was judged by. */
  public JournalView told() {
    return told;
  }

  /** Returns the full hour up to which the air counts. */
  public Instant hour() {
    return hour;
  }

  /** Returns up to when a lot was followed: a lot that came in since then, until that moment. */
  public Instant asOf(Lot lot) {
    return hour.isBefore(lot.harvestedAt()) ? lot.harvestedAt() : hour;
  }

  /** Returns a lot with what the air has done to it. */
  public Optional<Grown> grown(Lot lot) {
    return crops.crop(lot.crop()).map(crop -> grown(lot, crop));
  }

  /** Returns a lot with its verdict, in the light of what others of its variety have shown. */
  public Optional<Offer> offer(Lot lot) {
    return grown(lot)
        .map(
            grown ->
                offers.computeIfAbsent(
                    lot.code(), code -> experience(grown.name()).judge(grown, asOf(lot))));
  }

  /** Returns every lot that holds fruit with its verdict, in the order in which they came in. */
  public List<Offer> holding() {
    return told.lots().all().stream()
        .filter(lot -> lot.fruits().sound() > 0)
        .flatMap(lot -> offer(lot).stream())
        .toList();
  }

  /** Returns what may be eaten, the first first. */
  public List<Offer> toEat() {
    List<Offer> known = toEat;
    if (known == null) {
      known =
          EatingOrder.of(
              told.lots().all().stream()
                  .filter(lot -> lot.fruits().free() > 0)
                  .flatMap(lot -> offer(lot).stream())
                  .toList());
      toEat = known;
    }
    return known;
  }

  /** Returns the lots of the same variety; of one without a name, that one alone. */
  public List<Grown> ofVariety(Lot lot) {
    return lot.variety().isEmpty() ? grown(lot).stream().toList() : ofVariety(name(lot));
  }

  /** Returns every variety that came in and has a name, in the order in which they first did. */
  public List<VarietyName> varieties() {
    return byVariety.keySet().stream().filter(name -> !name.variety().isEmpty()).toList();
  }

  /**
   * Returns the verdict on a variety.
   *
   * @param now up to which the days are counted
   */
  public VarietyVerdict variety(VarietyName name, Instant now) {
    Dated known = verdicts.get(name);
    if (known == null || !known.isSoAt(now)) {
      TrialRecord record = trials();
      Instant until = nextDay(record.comparedWith(name), now);
      known = new Dated(now, until, VarietyVerdict.of(name, record, now));
      verdicts.put(name, known);
    }
    return known.verdict();
  }

  private static Instant nextDay(List<Grown> lots, Instant now) {
    Instant next = Instant.MAX;
    for (Grown grown : lots) {
      Instant harvested = grown.lot().harvestedAt();
      long days = harvested.isAfter(now) ? 0 : harvested.until(now, ChronoUnit.DAYS) + 1;
      Instant older = harvested.plus(days, ChronoUnit.DAYS);
      next = older.isBefore(next) ? older : next;
    }
    return next;
  }

  /** Returns the varieties that others are compared with. */
  public List<VarietyName> checks() {
    return trials().checks();
  }

  /** Returns what closed sessions gave, by lot. */
  public Map<String, List<Tasted>> tasted() {
    return tasted;
  }

  /** Works out what most will ask. */
  void prepare() {
    var unused = List.of(holding(), toEat());
  }

  private TrialRecord trials() {
    TrialRecord known = trials;
    if (known == null) {
      Map<VarietyName, List<Grown>> grown = new LinkedHashMap<>();
      varieties().forEach(name -> grown.put(name, ofVariety(name)));
      known =
          liking.with(
              new TrialRecord(
                  grown, told.lots().plans().values(), closed(told), tasted, told.decisions()));
      trials = known;
    }
    return known;
  }

  private List<Grown> ofVariety(VarietyName name) {
    return byVariety.getOrDefault(name, List.of()).stream()
        .flatMap(lot -> grown(lot).stream())
        .toList();
  }

  private Experience experience(VarietyName name) {
    return learned
        .computeIfAbsent(
            name,
            asked -> {
              List<Grown> own = name.variety().isEmpty() ? List.of() : ofVariety(asked);
              return new Learned(own, Experience.of(own, tasted, taught));
            })
        .experience();
  }

  /** Whoever asks for the same lot meanwhile waits for this sum instead of making another. */
  private Grown grown(Lot lot, Crop crop) {
    return lives.computeIfAbsent(lot.code(), code -> new Grown(lot, crop, lived(lot, crop)));
  }

  private LotExposure lived(Lot lot, Crop crop) {
    Instant until = asOf(lot);
    List<Exposure> life = Exposure.of(lot, told.accuracies(), historyOf, until);
    LotAccount account = LotAccount.of(life, crop, holdMillis);
    History here = historyOf.apply(lot.place());
    return LotExposure.of(lot, crop, life, account, here, holdMillis, until);
  }

  /**
   * Where the same is told of a lot, the air has done the same to it up to the same hour; and what
   * lots teach is the same while they are.
   */
  private void takeOver(JudgedLots before, boolean isSameTaste) {
    boolean isSameHour = before.hour.equals(hour);
    if (before.told.lastAccuracy() != told.lastAccuracy()) {
      return;
    }
    for (Lot lot : told.lots().all()) {
      Grown known = before.lives.get(lot.code());
      if (known != null && (isSameHour || before.isOver(known))) {
        if (known.lot().equals(lot)) {
          lives.put(lot.code(), known);
        } else if (LifeStory.of(known.lot()).equals(LifeStory.of(lot))) {
          lives.put(lot.code(), new Grown(lot, known.crop(), known.lived()));
        }
      }
    }
    if (isSameTaste) {
      before.learned.forEach(
          (name, known) -> {
            List<Lot> lots = byVariety.getOrDefault(name, List.of());
            if (areSame(known.lots(), lots.stream().map(lot -> lives.get(lot.code())).toList())) {
              learned.put(name, known);
            }
          });
    }
  }

  /** Tells whether two lists hold the very same things. */
  private static boolean areSame(List<?> one, List<? extends @Nullable Object> other) {
    boolean isSame = one.size() == other.size();
    for (int i = 0; isSame && i < one.size(); i++) {
      isSame = one.get(i) == other.get(i);
    }
    return isSame;
  }

  /** Tells whether nothing more can happen to a lot: its last fruit is gone and its cure known. */
  private boolean isOver(Grown grown) {
    return grown.lot().emptied().filter(gone -> !gone.isAfter(hour)).isPresent()
        && grown.lived().cureEnd().isPresent();
  }

  private static VarietyName name(Lot lot) {
    return new VarietyName(lot.crop(), lot.variety());
  }

  private static List<Session> closed(JournalView told) {
    return told.sessions().stream().filter(session -> session.closed().isPresent()).toList();
  }
}
